/** Pages of the overview, of the first run and of help. */
@NullMarked
package dev.flangewright.overview.web;

import org.jspecify.annotations.NullMarked;
