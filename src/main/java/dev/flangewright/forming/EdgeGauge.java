package dev.flangewright.forming;

/**
 * How much strain an edge has taken, from a micrometer or from the angle it stands at.
 *
 * <pre>
 * FM-MICRO  ε = −(1 + R)·ln(t_edge/t)
 * FM-ANGLE  ε = ε_demand(θ_now)
 * t_edge thickness at the free edge (mm), t sheet thickness (mm), R normal anisotropy, θ_now the
 * bend angle from flat as measured (degrees)
 * </pre>
 *
 * <p>FM-MICRO is volume constancy: derived. A micrometer that reads to 0.01 mm on a 1 mm sheet
 * resolves 2 % of strain when R is 1; average several readings. Hammer marks thin the edge and
 * feign stretch. FM-ANGLE takes the edge to have gone along with the flange; an edge that stands in
 * ruffles has not, so the rest is a lower bound there.
 */
public final class EdgeGauge {

  private EdgeGauge() {}

  /** ε that a measured edge thickness shows, negative where the edge has shrunk (thickened). */
  public static double strainOfThickness(double edgeThicknessMm, Sheet sheet) {
    FormingInput.EDGE_THICKNESS.check(edgeThicknessMm);
    return -(1 + sheet.anisotropy()) * Math.log(edgeThicknessMm / sheet.thicknessMm());
  }

  /**
   * The rest at a station whose edge has a measured thickness.
   *
   * @param station the demand there
   * @param zoneMm length of edge that the reading speaks for
   */
  public static Residual restByThickness(
      StationFigures station, Sheet sheet, double edgeThicknessMm, double zoneMm) {
    FormingInput.SPAN.check(zoneMm);
    double rest = rest(station.edgeStrain(), strainOfThickness(edgeThicknessMm, sheet));
    return new Residual(rest, rest * zoneMm, false);
  }

  /**
   * The rest at a station whose flange stands at a measured angle.
   *
   * @param angleNowDeg from flat, above 0 and not above the station's own
   * @param zoneMm length of edge that the reading speaks for
   */
  public static Residual restByAngle(
      StationFigures station, Sheet sheet, double angleNowDeg, double zoneMm) {
    FormingInput.SPAN.check(zoneMm);
    FormingInput.BEND_ANGLE.check(angleNowDeg);
    double now =
        FlangeSection.of(
                station.kind(),
                station.radiusMm(),
                sheet,
                station.flangeWidthMm(),
                Math.min(angleNowDeg, station.bendAngleDeg()))
            .edgeStrain();
    double rest = rest(station.edgeStrain(), now);
    return new Residual(rest, rest * zoneMm, true);
  }

  /** Never negative: an edge that has done more than was asked has nothing left to do. */
  private static double rest(double demand, double done) {
    return Math.max(0, Math.signum(demand) * (demand - done));
  }
}
