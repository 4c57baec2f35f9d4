package dev.flangewright.parts.web;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.FlangeSection;
import dev.flangewright.forming.Sheet;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

/** One section of a flange. Its ranges are checked by the calculation itself. */
@Schema(description = "One section of a flange, dimensions to the outer mould line.")
record FlangeRequest(
    @Schema(
            description =
                "SHRINK: convex, the edge gets shorter. STRETCH: concave, longer. PLAIN: straight."
                    + " MIXED is refused: a single section is one kind.")
        @NotNull(message = IS_MISSING)
        FlangeKind kind,
    @Schema(
            description = "Radius of the outer mould line, mm, above 0; not needed when PLAIN.",
            example = "500")
        @Nullable Double contourRadiusMm,
    @Schema(description = "Sheet thickness, mm, from 0.1 to 10.", example = "1.2")
        @NotNull(message = IS_MISSING)
        Double thicknessMm,
    @Schema(description = "Inside bend radius, mm, from 0 to 100.", example = "3")
        @NotNull(message = IS_MISSING)
        Double insideBendRadiusMm,
    @Schema(
            description = "Flange width to the outer mould line, mm, above 0 up to 500.",
            example = "20")
        @NotNull(message = IS_MISSING)
        Double flangeWidthMm,
    @Schema(description = "Bend angle from flat, degrees, above 0 below 165.", example = "90")
        @NotNull(message = IS_MISSING)
        Double bendAngleDeg,
    @Schema(
            description =
                "Depth of the neutral surface from the inside face as a fraction of the thickness,"
                    + " from 0 to 1; when absent 0.0078/(π/180), about 0.447.",
            example = "0.446")
        @Nullable Double kFactor,
    @Schema(
            description =
                "Normal anisotropy of the sheet, from 0.1 to 5; when absent 1 (isotropic).",
            example = "1.0")
        @Nullable Double anisotropy) {

  private static final String IS_MISSING = "is missing";

  FlangeSection section() {
    Sheet sheet =
        new Sheet(
            thicknessMm,
            insideBendRadiusMm,
            kFactor == null ? Sheet.DEFAULT_K_FACTOR : kFactor,
            anisotropy == null ? Sheet.DEFAULT_ANISOTROPY : anisotropy);
    return FlangeSection.of(
        kind,
        contourRadiusMm == null ? Double.NaN : contourRadiusMm,
        sheet,
        flangeWidthMm,
        bendAngleDeg);
  }

  boolean lacksItsRadius() {
    return contourRadiusMm == null && (kind == FlangeKind.SHRINK || kind == FlangeKind.STRETCH);
  }
}
