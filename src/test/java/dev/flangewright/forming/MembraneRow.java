package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** One flange, by FM-DEV and as a membrane. */
record MembraneRow(
    FlangeKind kind,
    double radiusMm,
    double bendAngleDeg,
    double widthMm,
    FlangeSection section,
    MembraneFlange membrane,
    double blankRadiusMm) {

  static final double[] RADII_MM = {60, 120, 250, 500, 1000, 2000};
  static final double[] ANGLES_DEG = {60, 90, 120};
  static final double[] WIDTHS_MM = {8, 15, 25, 40};

  /** Natural strain of an elongation of 20 %, about what soft sheet gives: common practice. */
  private static final double MOST_STRAIN = Math.log(1.2);

  /** Every flange of the grid that can be made. */
  static List<MembraneRow> grid(Sheet sheet, double n) {
    var rows = new ArrayList<MembraneRow>();
    for (var kind : List.of(FlangeKind.SHRINK, FlangeKind.STRETCH)) {
      for (double radius : RADII_MM) {
        for (double angle : ANGLES_DEG) {
          for (double width : WIDTHS_MM) {
            if (canBeMade(kind, radius, sheet, width, angle)) {
              rows.add(of(kind, radius, sheet, width, angle, n));
            }
          }
        }
      }
    }
    return rows;
  }

  static MembraneRow of(
      FlangeKind kind, double radius, Sheet sheet, double width, double angle, double n) {
    var section = FlangeSection.of(kind, radius, sheet, width, angle);
    var membrane = new MembraneFlange(section, sheet, angle, width, n);
    double blank = membrane.blankEdgeRadiusMm(section.blankEdgeRadiusMm());
    return new MembraneRow(kind, radius, angle, width, section, membrane, blank);
  }

  private static boolean canBeMade(
      FlangeKind kind, double radius, Sheet sheet, double width, double angle) {
    try {
      var section = FlangeSection.of(kind, radius, sheet, width, angle);
      return Math.abs(section.edgeStrain()) <= MOST_STRAIN;
    } catch (FormingException wider) {
      return false;
    }
  }

  double membraneStrain() {
    return membrane.edgeStrain(blankRadiusMm);
  }

  /** FM-DEV's edge strain against the membrane's, per cent of it. */
  double strainErrorPercent() {
    return 100 * (section.edgeStrain() / membraneStrain() - 1);
  }

  /** FM-DEV's blank beyond the tangent line against the membrane's, mm. */
  double blankErrorMm() {
    double beyond = Math.abs(blankRadiusMm - section.tangentRadiusMm());
    return section.blankBeyondTangentMm() - beyond;
  }

  boolean is(FlangeKind otherKind, double radius, double angle, double width) {
    return kind == otherKind && radiusMm == radius && bendAngleDeg == angle && widthMm == width;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "%s, %.0f mm, %.0f°, %.0f mm wide", kind, radiusMm, bendAngleDeg, widthMm);
  }
}
