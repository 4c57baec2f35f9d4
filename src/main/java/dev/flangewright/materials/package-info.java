/**
 * What the figures are computed with: the shipped library of alloys, tempers, minimum bend radii,
 * heat treatment and sheet gauges, a build's own metals by certificate, and its own shop values.
 * Each value stands with its source.
 */
@ApplicationModule(allowedDependencies = {"forming", "people"})
@NullMarked
package dev.flangewright.materials;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
