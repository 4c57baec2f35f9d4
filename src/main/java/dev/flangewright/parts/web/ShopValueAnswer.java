package dev.flangewright.parts.web;

import dev.flangewright.forming.ShopValue;
import dev.flangewright.materials.ShopValues;
import dev.flangewright.materials.Sourced;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Arrays;
import java.util.List;

/** A shop value that figures are computed with. */
record ShopValueAnswer(
    ShopValue name,
    String label,
    @Schema(description = "The value in force, dimensionless.") double value,
    double byDefault,
    @Schema(description = "Whether it is the build's own.") boolean own,
    @Schema(description = "Of the value in force; for a build's own with who entered it and when.")
        String source) {

  static List<ShopValueAnswer> of(ShopValues values) {
    return Arrays.stream(ShopValue.values()).map(which -> of(which, values)).toList();
  }

  private static ShopValueAnswer of(ShopValue which, ShopValues values) {
    Sourced used = values.of(which);
    return new ShopValueAnswer(
        which, which.label(), used.value(), which.byDefault(), values.isOwn(which), used.source());
  }
}
