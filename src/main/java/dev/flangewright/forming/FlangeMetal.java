package dev.flangewright.forming;

import org.jspecify.annotations.Nullable;

/**
 * What the stations of a flange have in common, worked out once for all of them.
 *
 * @param practice the shop values to reckon with
 * @param splitLimitStrain ε_lim; null when unknown
 * @param blockRadiusMm radius of the block that allows for springback; null when unknown
 */
record FlangeMetal(
    Sheet sheet,
    Practice practice,
    @Nullable Double splitLimitStrain,
    @Nullable Double blockRadiusMm) {

  static FlangeMetal of(Sheet sheet, MetalValues metal, EdgeCondition edge, Practice practice) {
    return new FlangeMetal(
        sheet,
        practice,
        SplitLimit.strain(metal, edge, practice),
        Springback.blockRadiusMm(sheet, metal));
  }

  /** FM-BLOCK, degrees; null when the block's radius is unknown. */
  @Nullable Double blockAngleDeg(double bendAngleDeg) {
    return blockRadiusMm == null
        ? null
        : Springback.blockAngle(
            bendAngleDeg, sheet.insideBendRadiusMm(), blockRadiusMm, sheet.thicknessMm());
  }
}
