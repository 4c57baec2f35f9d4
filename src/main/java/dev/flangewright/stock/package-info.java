/** Deliveries of sheet, the certificates they came with, and whether metal may be cut from them. */
@ApplicationModule(allowedDependencies = {"parts", "materials", "people", "forming"})
@NullMarked
package dev.flangewright.stock;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
