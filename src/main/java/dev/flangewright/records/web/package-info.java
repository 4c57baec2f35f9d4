/** The journal as pages, as a file, and over HTTP. */
@NullMarked
package dev.flangewright.records.web;

import org.jspecify.annotations.NullMarked;
