/**
 * The register: builds, frames, parts, flanges and contours, their forming figures, import and
 * export.
 */
@ApplicationModule(allowedDependencies = {"forming", "materials", "people", "drawing"})
@NullMarked
package dev.flangewright.parts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
