package dev.flangewright.forming;

/**
 * One station of a fair fit: where it was read, where the fit has it, and how sure the curvature
 * is.
 *
 * @param number as in the file
 * @param measured the point as read
 * @param fitted the foot of its perpendicular on the fit
 * @param deviationMm distance of the point as read from the fit, positive when it lies to the left
 *     of travel, towards the web
 * @param curvaturePerMm of the fit, 1/mm, positive = left = shrink
 * @param curvatureLowPerMm lower end of FM-BAND, 1/mm
 * @param curvatureHighPerMm upper end of FM-BAND, 1/mm
 */
public record FitStation(
    int number,
    Point measured,
    Point fitted,
    double deviationMm,
    double curvaturePerMm,
    double curvatureLowPerMm,
    double curvatureHighPerMm) {

  /**
   * FM-BAND carried to the edge: the strain at both ends of the curvature band, for the angle and
   * width of the station given.
   *
   * @throws FormingException when a section cannot be made at one of them
   */
  public StrainBand edgeStrain(Sheet sheet, Station station) {
    return new StrainBand(
        strain(curvatureHighPerMm, sheet, station), strain(curvatureLowPerMm, sheet, station));
  }

  private static double strain(double perMm, Sheet sheet, Station station) {
    var kind = FlangeKind.ofCurvature(perMm);
    try {
      return FlangeSection.of(
              kind, 1 / Math.abs(perMm), sheet, station.widthMm(), station.bendAngleDeg())
          .edgeStrain();
    } catch (FormingException refusal) {
      throw refusal.at(station.number());
    }
  }
}
