/**
 * The archive: every table of a database in one file that either engine can be filled from. How the
 * file is laid out stands in docs/operating.md.
 */
@NullMarked
package dev.flangewright.records.archive;

import org.jspecify.annotations.NullMarked;
