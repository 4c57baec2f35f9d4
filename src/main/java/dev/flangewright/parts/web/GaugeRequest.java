package dev.flangewright.parts.web;

import dev.flangewright.parts.GaugeEntry;
import dev.flangewright.parts.GaugeKind;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A gauge reading. */
record GaugeRequest(
    @NotBlank @Size(max = 40) String flange,
    @NotNull GaugeKind gauge,
    @Schema(description = "Where a micrometer or an angle was read.") @Nullable Integer station,
    @Schema(
            description =
                "Where a straight-edge or template begins; the first station if left out.")
        @Nullable Integer fromStation,
    @Schema(description = "Where it ends; the last station if left out.")
        @Nullable Integer toStation,
    @Schema(
            description =
                "Straight-edge: the face of the web on which the gap shows in the middle,"
                    + " FLANGE_FACE or OTHER_FACE. Template: MIDDLE or ENDS.",
            allowableValues = {"FLANGE_FACE", "OTHER_FACE", "MIDDLE", "ENDS"})
        @Nullable String gapAt,
    @Schema(description = "Between the flanges, mm; from the drawing's two contours if left out.")
        @Nullable BigDecimal webDepthMm,
    @Schema(description = "Whether the web's other flange is still flat.")
        @Nullable Boolean otherFlangeFlat,
    @Schema(description = "As the flange stands, to the mould line; the working width if left out.")
        @Nullable BigDecimal widthMm,
    @Schema(description = "Gap in mm, edge thickness in mm, or bend angle from flat in degrees.")
        @NotNull
        BigDecimal reading) {

  GaugeEntry written() {
    return new GaugeEntry(
        flange,
        gauge.name(),
        text(station),
        text(fromStation),
        text(toStation),
        gapAt == null ? "" : gapAt,
        plain(webDepthMm),
        Boolean.TRUE.equals(otherFlangeFlat) ? "FLAT" : "UP",
        plain(widthMm),
        plain(reading));
  }

  private static String text(@Nullable Integer number) {
    return number == null ? "" : number.toString();
  }

  private static String plain(@Nullable BigDecimal number) {
    return number == null ? "" : number.toPlainString();
  }
}
