package dev.flangewright.forming;

import org.jspecify.annotations.Nullable;

/**
 * The blank radius and the hoop strain of a curved flange's free edge.
 *
 * <pre>
 * FM-DEV  r(s) = Rb ± ρ·sin(s/ρ)                     in the bend, 0 ≤ s ≤ BA
 *         r(s) = Rb ± [ρ·sin θ + (s − BA)·cos θ]      in the flat of the flange
 *         r0^(1+m) = Rb^(1+m) ± (1+m)·∫ r^m ds
 *         ε = ln(r/r0)
 * + convex (shrink), − concave (stretch); Rb radius of the web's tangent line (mm), ρ neutral
 * radius of the bend (mm), θ bend angle (rad), s length along the neutral surface from the tangent
 * line (mm), r formed radius and r0 blank radius of the same metal (mm), m = R/(1+R), R normal
 * anisotropy, ε natural hoop strain, positive where the edge gets longer
 * </pre>
 *
 * <p>Derivation: the hoop stress acts alone at a free edge, so the width strain is −m·ε and ds =
 * (r/r0)^(−m)·dr0. With θ = 90° and a sharp bend this is r0/R = (1 ± (1+m)·h/R)^(1/(1+m)), the
 * axisymmetric closed form for a flange in uniaxial hoop stress. Source for treating a flange so:
 * Dudra and Shah, J. Mater. Shaping Technol. 6 (1988) 91–101 (abstract read), and Wang and Wenner,
 * Int. J. Mech. Sci. 16 (1974) 135–143 (named there, not read).
 *
 * <p>Valid while r and r0 stay positive. Neglected: the stress along the width nearer the root
 * (against a membrane in equilibrium the edge strain is off by less than 1 % of itself, see
 * docs/method.md); friction, which holds the metal back along the width (the blank of a shrink
 * flange errs short by that, of a stretch flange long, at most by the difference to m = 0, about 1
 * % of the width at 4 % of strain; the peak strain of a shrink errs low by the like); strain in the
 * web; metal that moves along the edge from a tight run to an easy one (the peak strain errs high).
 *
 * <p>Computed relative to Rb, so that nothing cancels as Rb grows; the bend part by {@link
 * BendIntegral}, the flat part in closed form.
 *
 * @param beyondMm |r0 − Rb|
 * @param formedRadiusMm r at the edge
 * @param blankRadiusMm r0 at the edge
 * @param strain ε at the edge
 * @param gather (r0 − r)/Rb, mm of edge to take out per mm of tangent line; negative: to put in
 */
record EdgeDevelopment(
    double beyondMm, double formedRadiusMm, double blankRadiusMm, double strain, double gather) {

  /**
   * @param side +1 convex, −1 concave
   * @param flat length of the flat part of the flange, mm
   * @return null when the formed or the blank edge would reach the centre of the curve
   */
  static @Nullable EdgeDevelopment of(
      int side, double tangentRadius, double rho, double theta, double flat, double m) {
    var walk = Walk.through(side, tangentRadius, rho, theta, m);
    double slope = side * Math.cos(theta);
    double rise = walk.endRadius - 1 + slope * flat / tangentRadius;
    double q = side * (1 + m) * (walk.bend + walk.flatIntegral(slope, flat / tangentRadius, m));
    if (walk.lowestRadius <= 0 || rise <= -1 || q <= -1) {
      return null;
    }
    double logBlank = Math.log1p(q) / (1 + m);
    double blankRise = Math.expm1(logBlank);
    return new EdgeDevelopment(
        tangentRadius * Math.abs(blankRise),
        tangentRadius * (1 + rise),
        tangentRadius * (1 + blankRise),
        Math.log1p(rise) - logBlank,
        blankRise - rise);
  }

  /**
   * The flat length at which the edge reaches the centre, mm: the limit that {@link #of} refuses
   * at. On a concave side the blank gets there before the formed edge, which is longer; on a convex
   * side only the formed edge can.
   *
   * @return null when the bend alone gets there, infinite when no width does
   */
  static @Nullable Double flatLimit(
      int side, double tangentRadius, double rho, double theta, double m) {
    var walk = Walk.through(side, tangentRadius, rho, theta, m);
    double left = 1 / (1 + m) - walk.bend;
    if (walk.lowestRadius <= 0 || side < 0 && left <= 0) {
      return null;
    }
    double slope = side * Math.cos(theta);
    if (side < 0) {
      return tangentRadius * walk.flatFor(left, slope, m);
    }
    return slope < 0 ? tangentRadius * walk.endRadius / -slope : Double.POSITIVE_INFINITY;
  }

  /** The bend part of the way from the tangent line to the edge; lengths as fractions of Rb. */
  private record Walk(double bend, double endRadius, double lowestRadius) {

    static Walk through(int side, double tangentRadius, double rho, double theta, double m) {
      double c = side * rho / tangentRadius;
      double end = 1 + c * Math.sin(theta);
      double lowest = c < 0 && theta > Math.PI / 2 ? 1 + c : Math.min(1, end);
      double bend = lowest <= 0 ? 0 : BendIntegral.of(c, theta, m) * rho / tangentRadius;
      return new Walk(bend, end, lowest);
    }

    /** ∫ r^m du over a flat of the given length, r = endRadius + slope·u. */
    double flatIntegral(double slope, double length, double m) {
      double x = slope * length / endRadius;
      double mean = x == 0 ? 1 : Math.expm1((1 + m) * Math.log1p(x)) / ((1 + m) * x);
      return length * Math.pow(endRadius, m) * mean;
    }

    /** The flat length whose integral is the given one. */
    double flatFor(double integral, double slope, double m) {
      double y = (1 + m) * integral * slope / Math.pow(endRadius, 1 + m);
      double stretchOfMean = y == 0 ? 1 : Math.expm1(Math.log1p(y) / (1 + m)) * (1 + m) / y;
      return integral / Math.pow(endRadius, m) * stretchOfMean;
    }
  }
}
