package dev.flangewright.forming;

import org.jspecify.annotations.Nullable;

/**
 * The figures of one station of a flange.
 *
 * @param number the station's number as in the file
 * @param arcMm along the mould line from the first station
 * @param radiusMm mould-line radius; infinite where straight
 * @param curvaturePerMm signed, positive where the edge shrinks
 * @param bendAngleDeg as given
 * @param flangeWidthMm as given, or what a cutout leaves of it
 * @param section the section through the flange here
 * @param flatWidthMm b = W − SB
 * @param ruffleRatio |ε|/ε_cr; 0 where the edge does not shrink
 * @param splitUtilisation ε/ε_lim; 0 where the edge does not stretch, null when unknown
 * @param passes number of passes at the default strain a pass
 * @param blockAngleDeg angle of the block that allows for springback; null when unknown
 */
public record StationFigures(
    int number,
    double arcMm,
    double radiusMm,
    double curvaturePerMm,
    double bendAngleDeg,
    double flangeWidthMm,
    FlangeSection section,
    double flatWidthMm,
    double ruffleRatio,
    @Nullable Double splitUtilisation,
    int passes,
    @Nullable Double blockAngleDeg) {

  static StationFigures of(Contour contour, int i, FlangeMetal metal) {
    return of(contour, i, metal, Double.POSITIVE_INFINITY);
  }

  /** As {@link #of} where a cutout leaves at most so much of the flange's width. */
  static StationFigures of(Contour contour, int i, FlangeMetal metal, double atMostMm) {
    var station = contour.stations().get(i);
    var sheet = metal.sheet();
    double width = Math.min(station.widthMm(), atMostMm);
    var section = section(contour, i, sheet, width);
    double flat = width - section.setbackMm();
    double strain = section.edgeStrain();
    double thickness = sheet.thicknessMm();
    return new StationFigures(
        station.number(),
        contour.arcMm(i),
        contour.radiusMm(i),
        contour.curvaturePerMm(i),
        station.bendAngleDeg(),
        width,
        section,
        flat,
        Ruffling.ratio(strain, thickness, flat),
        SplitLimit.utilisation(strain, metal.splitLimitStrain()),
        Passes.count(strain, Passes.strainPerPass(strain, thickness, flat, metal.practice())),
        metal.blockAngleDeg(station.bendAngleDeg()));
  }

  private static FlangeSection section(Contour contour, int i, Sheet sheet, double widthMm) {
    var station = contour.stations().get(i);
    try {
      return FlangeSection.of(
          contour.kindAt(i), contour.radiusMm(i), sheet, widthMm, station.bendAngleDeg());
    } catch (FormingException refusal) {
      throw refusal.at(station.number());
    }
  }

  public FlangeKind kind() {
    return section.kind();
  }

  public double setbackMm() {
    return section.setbackMm();
  }

  public double bendAllowanceMm() {
    return section.bendAllowanceMm();
  }

  /** Blank beyond the tangent line, mm. */
  public double blankBeyondTangentMm() {
    return section.blankBeyondTangentMm();
  }

  /** Blank edge beyond the mould line, mm: negative where it falls short of it. */
  public double blankBeyondMouldLineMm() {
    return section.blankBeyondTangentMm() - section.setbackMm();
  }

  public double edgeStrain() {
    return section.edgeStrain();
  }

  public double edgeThicknessMm() {
    return section.edgeThicknessMm();
  }

  /** dℓ/ds = 1 − κ·SB: tangent line per mm of mould line. */
  double tangentPerMouldLine() {
    return 1 - curvaturePerMm * setbackMm();
  }

  /** Edge to take out (positive) or put in, mm per mm of mould line. */
  double gatherDensity() {
    return section.gatherMmPerMetre() / 1000 * tangentPerMouldLine();
  }
}
