/**
 * The demo scenario: an invented flying boat, its people and a half-finished history, told through
 * the same services that real work goes through.
 */
@NullMarked
package dev.flangewright.overview.demo;

import org.jspecify.annotations.NullMarked;
