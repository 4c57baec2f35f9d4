package dev.flangewright.forming;

/**
 * The straight bend: setback, bend allowance and blank width of a flange without curvature.
 *
 * <pre>
 * FM-SB    SB = (Ri + t)·tan(θ/2)       mould line to tangent line, mm
 * FM-BA    BA = θ·(Ri + k·t)            arc of the neutral surface in the bend, mm
 * FM-BLANK blank = BA + W − SB          blank beyond the web's tangent line, mm
 * Ri inside bend radius (mm), t thickness (mm), θ bend angle from flat (rad), k neutral-surface
 * fraction, W flange width to the outer mould line (mm)
 * </pre>
 *
 * <p>Valid for 0 &lt; θ &lt; 165° and W ≥ SB, dimensions always to the mould line. Neglected: the
 * shift of the neutral surface in tight bends (Ri &lt; 2t), where the true allowance is up to
 * 0.12·θ·t shorter, so the blank errs on the long side, which can be trimmed.
 *
 * <p>Source: FAA-H-8083-31, Aviation Maintenance Technician Handbook, Airframe vol. 1, ch. 4,
 * setback and bend allowance; setback factor tan(θ/2) also AC 43.13-1B, ch. 4, table 4-7.
 *
 * @param setbackMm SB
 * @param bendAllowanceMm BA
 * @param flatMm W − SB, the flat part of the flange
 */
public record StraightBend(double setbackMm, double bendAllowanceMm, double flatMm) {

  /**
   * @param flangeWidthMm W, above 0, at least the setback, up to 500 mm
   * @param bendAngleDeg θ, above 0 and below 165 degrees
   * @throws FormingException when an input is out of range or the flange is shorter than its bend
   */
  public static StraightBend of(Sheet sheet, double flangeWidthMm, double bendAngleDeg) {
    FormingInput.FLANGE_WIDTH.check(flangeWidthMm);
    double setback = setbackMm(sheet, bendAngleDeg);
    if (flangeWidthMm < setback) {
      throw FormingException.of(
          FormingException.Reason.FLANGE_SHORTER_THAN_BEND,
          FormingInput.FLANGE_WIDTH.field(),
          flangeWidthMm,
          Range.atLeast(setback));
    }
    return new StraightBend(setback, bendAllowanceMm(sheet, bendAngleDeg), flangeWidthMm - setback);
  }

  /** FM-SB, mm. */
  public static double setbackMm(Sheet sheet, double bendAngleDeg) {
    double theta = Math.toRadians(FormingInput.BEND_ANGLE.check(bendAngleDeg));
    return (sheet.insideBendRadiusMm() + sheet.thicknessMm()) * Math.tan(theta / 2);
  }

  /** FM-BA, mm. */
  public static double bendAllowanceMm(Sheet sheet, double bendAngleDeg) {
    double theta = Math.toRadians(FormingInput.BEND_ANGLE.check(bendAngleDeg));
    return theta * sheet.neutralRadiusMm();
  }

  /** FM-BLANK, mm. */
  public double straightBlankMm() {
    return bendAllowanceMm + flatMm;
  }
}
