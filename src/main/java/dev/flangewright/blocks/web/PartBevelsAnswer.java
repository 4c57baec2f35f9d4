package dev.flangewright.blocks.web;

import dev.flangewright.blocks.PartBevels;
import dev.flangewright.forming.BevelTable;
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
      @Schema(description = "Where the metal's values behind springback come from.") String metal,
      List<Bevel> stations) {

    static FlangeBevels of(PartBevels.OfFlange flange) {
      return new FlangeBevels(
          flange.flange(),
          flange.firstBlockAngleDeg(),
          flange.ground(),
          BevelTable.of(flange.figures()).rows().stream().map(Bevel::of).toList());
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
                  "Tilt of the saw table, degrees: block angle less 90, positive where the face leans"
                      + " in below the web face; null when unknown.")
          @Nullable Double sawTiltDeg) {

    static Bevel of(BevelTable.Row row) {
      return new Bevel(
          row.station(), row.arcMm(), row.bendAngleDeg(), row.blockAngleDeg(), row.tiltDeg());
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
