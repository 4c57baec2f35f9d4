package dev.flangewright.forming;

import org.jspecify.annotations.Nullable;

/**
 * Whether the bend is wide enough for the metal.
 *
 * <p>FM-RMIN: utilisation = R_min/Ri, R_min the smallest inside radius for alloy, temper and
 * thickness (mm) from a published table, Ri the inside radius of the part (mm). Above 1 the bend is
 * tighter than the table allows. Valid for the table's bend angle (usually 90°) and grain
 * direction. Neglected: the grain where the bend line runs along it (errs low, so turn the blank)
 * and the block radius being a little tighter than the part's.
 *
 * @param minBendRadiusMm R_min
 * @param insideBendRadiusMm Ri
 * @param utilisation R_min/Ri; 0 when any radius will do, infinite for a sharp bend that may not be
 */
public record BendRadiusCheck(
    double minBendRadiusMm, double insideBendRadiusMm, double utilisation) {

  /** The check, or null when the smallest radius is unknown. */
  public static @Nullable BendRadiusCheck of(Sheet sheet, MetalValues metal) {
    var smallest = metal.minBendRadiusMm();
    if (smallest == null) {
      return null;
    }
    double inside = sheet.insideBendRadiusMm();
    return new BendRadiusCheck(smallest, inside, smallest == 0 ? 0 : smallest / inside);
  }

  /** Whether the inside radius is at least the smallest. */
  public boolean isWideEnough() {
    return utilisation <= 1;
  }
}
