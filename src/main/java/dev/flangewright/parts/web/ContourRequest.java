package dev.flangewright.parts.web;

import dev.flangewright.parts.DrawnContour;
import dev.flangewright.parts.YAxis;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

/** A contour drawn as an SVG path. Its ranges are checked by the calculation itself. */
@Schema(description = "A contour drawn as an SVG path, one unit a millimetre.")
record ContourRequest(
    @Schema(
            description =
                "The text of the attribute d (W3C SVG 2, section 9.3): one open or closed line, up"
                    + " to 100,000 characters.",
            example = "M 433 -250 A 500 500 0 0 0 -433 -250")
        @NotNull(message = IS_MISSING)
        String path,
    @Schema(
            description = "Largest distance between stations, mm, from 0.1 to 10000.",
            example = "10")
        @NotNull(message = IS_MISSING)
        Double spacingMm,
    @Schema(description = "Of every station, from flat, above 0 below 165.", example = "90")
        @NotNull(message = IS_MISSING)
        Double bendAngleDeg,
    @Schema(description = "Of every station, mm, above 0 up to 500.", example = "22")
        @NotNull(message = IS_MISSING)
        Double widthMm,
    @Schema(
            description =
                "DOWN, as SVG has it: the contour stands as it is seen. UP: the numbers are the"
                    + " frame's own. When absent DOWN.")
        @Nullable YAxis yAxis,
    @Schema(
            description =
                "Whether the stations run from the path's end to its beginning, which puts the web"
                    + " on the other side; when absent they do not.")
        @Nullable Boolean reversed) {

  private static final String IS_MISSING = "is missing";

  DrawnContour contour() {
    return DrawnContour.of(
        path,
        spacingMm,
        bendAngleDeg,
        widthMm,
        yAxis == null ? YAxis.DOWN : yAxis,
        reversed != null && reversed);
  }
}
