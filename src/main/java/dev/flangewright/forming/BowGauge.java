package dev.flangewright.forming;

/**
 * What a straight-edge laid along the web says about an edge that is still too long or too short.
 *
 * <pre>
 * FM-BOW ε*(s) = e·s/b over a flange, s from 0 at the root to b at the edge, height y = s·sin θ
 *        κ = ∫ε*·(y − ȳ)dA / I,   δ = κ·L²/8
 *        so  e = (8δ/L²)·I / (t·(b²·sin θ/3 − ȳ·b/2))
 * e residual strain at the edge, b flat width (mm), θ bend angle, t thickness (mm), ȳ and I
 * centroid and second moment of the section about the axis in the web's plane (mm, mm⁴), κ bow of
 * the part out of the web's plane (1/mm), L straight-edge (mm), δ gap in its middle (mm)
 * </pre>
 *
 * <p>The residual strain falls linearly from the edge to nothing at the root and the part takes the
 * shape that leaves no force and no moment: derived, elastic beam theory. Valid for gaps small
 * against L. Neglected: the bend's own radius, the part's curvature in plan, and ruffles. A flange
 * that ruffles bows less, so the answer is a lower bound. Only this flange is taken to be wrong.
 *
 * @param webDepthMm depth of the web between the flanges, above 0
 * @param thicknessMm t
 * @param flatWidthMm b of the flange that is gauged, above 0
 * @param bendAngleDeg θ of the flange that is gauged
 * @param otherFlatWidthMm b of the flange at the web's other edge; 0 without one
 * @param otherBendAngleDeg its angle, as it stands now
 */
public record BowGauge(
    double webDepthMm,
    double thicknessMm,
    double flatWidthMm,
    double bendAngleDeg,
    double otherFlatWidthMm,
    double otherBendAngleDeg) {

  public BowGauge {
    FormingInput.WEB_DEPTH.check(webDepthMm);
    FormingInput.THICKNESS.check(thicknessMm);
    FormingInput.FLANGE_WIDTH.check(flatWidthMm);
    FormingInput.BEND_ANGLE.check(bendAngleDeg);
    FormingInput.OTHER_FLAT_WIDTH.check(otherFlatWidthMm);
    if (otherFlatWidthMm > 0) {
      FormingInput.BEND_ANGLE.check(otherBendAngleDeg);
    }
  }

  /** The rest that a gap of δ under a straight-edge of length L shows. */
  public Residual of(double gapMm, double spanMm) {
    FormingInput.GAP.check(gapMm);
    FormingInput.SPAN.check(spanMm);
    double strain = 8 * gapMm / (spanMm * spanMm) / bowPerStrain();
    return new Residual(strain, strain * spanMm, true);
  }

  /** δ, the gap that a residual strain at the edge opens under a straight-edge, mm. */
  public double gapMm(double residualStrain, double spanMm) {
    FormingInput.SPAN.check(spanMm);
    return residualStrain * bowPerStrain() * spanMm * spanMm / 8;
  }

  /** κ/e, 1/mm. */
  double bowPerStrain() {
    double height = centroidMm();
    double lever = flatWidthMm * sine(bendAngleDeg) / 3 - height / 2;
    return thicknessMm * flatWidthMm * lever / secondMomentMm4();
  }

  /** ȳ, height of the section's centroid over the web's middle plane, mm. */
  double centroidMm() {
    double moment =
        flatWidthMm * flatWidthMm * sine(bendAngleDeg) / 2
            + otherFlatWidthMm * otherFlatWidthMm * sine(otherBendAngleDeg) / 2;
    return moment / (webDepthMm + flatWidthMm + otherFlatWidthMm);
  }

  /** I of the section about its axis in the web's plane, mm⁴. */
  double secondMomentMm4() {
    double height = centroidMm();
    double web = webDepthMm * thicknessMm * (thicknessMm * thicknessMm / 12 + height * height);
    return web
        + flangeSecondMoment(flatWidthMm, sine(bendAngleDeg), height)
        + flangeSecondMoment(otherFlatWidthMm, sine(otherBendAngleDeg), height);
  }

  private double flangeSecondMoment(double b, double sine, double height) {
    return thicknessMm
        * (b * b * b * sine * sine / 3 - height * b * b * sine + height * height * b);
  }

  private static double sine(double angleDeg) {
    return Math.sin(Math.toRadians(angleDeg));
  }
}
