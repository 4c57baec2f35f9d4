package dev.flangewright.parts.web;

import dev.flangewright.forming.Corner;
import io.swagger.v3.oas.annotations.media.Schema;

/** A place where a contour changes its direction abruptly. */
@Schema(name = "Corner")
record CornerAnswer(
    @Schema(description = "The number of the station nearest to it.") int station,
    @Schema(description = "By how much the direction turns, degrees, positive to the left.")
        double turnDeg) {

  static CornerAnswer of(Corner corner) {
    return new CornerAnswer(corner.stationNumber(), corner.turnDeg());
  }
}
