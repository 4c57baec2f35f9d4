/** Routes, stages, pieces, the stage log, hold points, and what to form next. */
@ApplicationModule(
    allowedDependencies = {
      "blocks",
      "heat",
      "photos",
      "stock",
      "parts",
      "parts :: drawing",
      "materials",
      "people",
      "receipts",
      "forming",
      "drawing"
    })
@NullMarked
package dev.flangewright.bench;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
