package dev.flangewright.parts.web;

import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.parts.Supposition;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What to suppose of a part; what is left out stays as it is drawn. */
record SupposeRequest(
    @Nullable @Size(max = 60) String alloy,
    @Nullable @Size(max = 30) String temper,
    @Schema(description = "As in the register: 1.2, 20 SWG or 0.036 in.") @Nullable @Size(max = 30)
        String thickness,
    @Nullable BigDecimal insideBendRadiusMm,
    @Nullable @Size(max = 50) List<@Valid OfFlange> flanges) {

  /** One flange otherwise. */
  record OfFlange(
      @NotBlank @Size(max = 40) String name,
      @Nullable BigDecimal finishedWidthMm,
      @Nullable BigDecimal workingWidthMm,
      @Schema(description = "Degrees that every station is bent further; negative for less.")
          @Nullable BigDecimal turnDeg,
      @Nullable EdgeCondition edgeCondition) {

    private Supposition.OfFlange written() {
      return new Supposition.OfFlange(
          name,
          text(finishedWidthMm),
          text(workingWidthMm),
          text(turnDeg),
          edgeCondition == null ? "" : edgeCondition.name());
    }
  }

  Supposition written() {
    return new Supposition(
        text(alloy),
        text(temper),
        text(thickness),
        text(insideBendRadiusMm),
        flanges == null ? List.of() : flanges.stream().map(OfFlange::written).toList());
  }

  private static String text(@Nullable String given) {
    return given == null ? "" : given;
  }

  /** A number of any length is written out; one that is too long is refused by its reader. */
  private static String text(@Nullable BigDecimal given) {
    return given == null ? "" : given.toPlainString();
  }
}
