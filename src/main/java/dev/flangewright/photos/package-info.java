/**
 * Photos: what is taken in and how it is stored. Knows nothing of what is photographed; the modules
 * that have such things say so by {@link dev.flangewright.photos.Photographed}.
 */
@ApplicationModule(allowedDependencies = {"people", "receipts"})
@NullMarked
package dev.flangewright.photos;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
