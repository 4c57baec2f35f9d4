/** Pages of the register. */
@NullMarked
package dev.flangewright.parts.web;

import org.jspecify.annotations.NullMarked;
