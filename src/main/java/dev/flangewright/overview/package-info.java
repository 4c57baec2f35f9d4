/** The overview of a build and the demo scenario: reads from the others, nobody reads from it. */
@ApplicationModule(
    allowedDependencies = {
      "quality",
      "bench",
      "blocks",
      "photos",
      "stock",
      "parts",
      "parts :: exchange",
      "materials",
      "forming",
      "people",
      "drawing"
    })
@NullMarked
package dev.flangewright.overview;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
