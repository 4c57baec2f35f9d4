/**
 * Draws the invented hull of the demo scenario, the two-seat flying boat Tidewing, and writes its
 * two files. There is no such aircraft: every number is made up to look like a day's work.
 */
@NullMarked
package dev.flangewright.overview.demo;

import org.jspecify.annotations.NullMarked;
