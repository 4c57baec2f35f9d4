/**
 * Pure forming calculation: contour, flange development, demand, limits, springback.
 *
 * <p>Units inside this package: mm, radians, MPa; strains are natural (logarithmic), positive where
 * the metal gets longer. No Spring, no JPA, no clock; public types are immutable.
 */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package dev.flangewright.forming;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
