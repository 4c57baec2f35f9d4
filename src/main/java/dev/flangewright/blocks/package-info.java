/** Block sets, their blocks, in which condition these are and where they lie. */
@ApplicationModule(
    allowedDependencies = {"parts", "photos", "people", "receipts", "forming", "drawing"})
@NullMarked
package dev.flangewright.blocks;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
