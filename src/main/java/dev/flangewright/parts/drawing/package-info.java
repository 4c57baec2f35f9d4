/** Drawings of a part from its forming figures. */
@NullMarked
package dev.flangewright.parts.drawing;

import org.jspecify.annotations.NullMarked;
