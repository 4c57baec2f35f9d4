/** Inspections, dispositions and scrap causes. */
@ApplicationModule(
    allowedDependencies = {"bench", "parts", "photos", "people", "receipts", "drawing"})
@NullMarked
package dev.flangewright.quality;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
