/** Drawings of a part from its forming figures, for every page that shows one. */
@NamedInterface("drawing")
@NullMarked
package dev.flangewright.parts.drawing;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
