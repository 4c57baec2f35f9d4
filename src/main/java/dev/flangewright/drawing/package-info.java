/** An SVG writer and the marks of the drawings: knows shapes, not parts. */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package dev.flangewright.drawing;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
