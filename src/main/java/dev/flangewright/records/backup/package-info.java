/** Backups: when they are made, where they lie, and whether each could be restored. */
@NullMarked
package dev.flangewright.records.backup;

import org.jspecify.annotations.NullMarked;
