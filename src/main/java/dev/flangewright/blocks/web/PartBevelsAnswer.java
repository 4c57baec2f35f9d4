package dev.flangewright.blocks.web;

import dev.flangewright.blocks.PartBevels;
import dev.flangewright.forming.Springback;
import dev.flangewright.forming.StationFigures;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the form block of a part is cut to. */
record PartBevelsAnswer(
    long partId,
    String partNumber,
    List<FlangeBevels> flanges,
    @Schema(description = "Why there are no bevels; null when there are.")
        @Nullable String problem) {

  /** One flange, station by station. */
  record FlangeBevels(
      String flange,
      @Schema(
              description =
                  "Where the first of two stages of form blocks is to bring the flange at its peak"
                      + " station, degrees from flat; null where one stage serves.")
          @Nullable Double firstBlockAngleDeg,
      List<Bevel> stations) {

    static FlangeBevels of(PartBevels.OfFlange flange) {
      return new FlangeBevels(
          flange.flange(),
          flange.firstBlockAngleDeg(),
          flange.figures().stations().stream().map(Bevel::of).toList());
    }
  }

  /** The bevel at one station. */
  record Bevel(
      @Schema(description = "The station's number as in the file.") int station,
      @Schema(description = "Along the mould line from the first station, mm.") double arcMm,
      @Schema(description = "As drawn, from flat, degrees.") double bendAngleDeg,
      @Schema(description = "From flat, degrees; null when unknown.")
          @Nullable Double blockAngleDeg,
      @Schema(
              description =
                  "Of the saw table from square to the blade, degrees; null when unknown. A block"
                      + " angle above 90 leans in below the web face.")
          @Nullable Double sawTiltDeg) {

    static Bevel of(StationFigures at) {
      Double block = at.blockAngleDeg();
      return new Bevel(
          at.number(),
          at.arcMm(),
          at.bendAngleDeg(),
          block,
          block == null ? null : Springback.sawTiltDeg(block));
    }
  }

  static PartBevelsAnswer of(PartBevels part) {
    return new PartBevelsAnswer(
        part.part().id(),
        part.part().partNumber(),
        part.flanges().stream().map(FlangeBevels::of).toList(),
        part.problem());
  }
}
