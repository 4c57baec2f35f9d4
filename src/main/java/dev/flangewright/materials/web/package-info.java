/** The page of the shipped tables. */
@NullMarked
package dev.flangewright.materials.web;

import org.jspecify.annotations.NullMarked;
