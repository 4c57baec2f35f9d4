/**
 * The shipped library of alloys, tempers, minimum bend radii and sheet gauges, each value with its
 * source.
 */
@ApplicationModule(allowedDependencies = {"forming"})
@NullMarked
package dev.flangewright.materials;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
