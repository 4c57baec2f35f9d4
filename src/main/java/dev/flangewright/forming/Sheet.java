package dev.flangewright.forming;

import org.jspecify.annotations.Nullable;

/**
 * The sheet and how it is bent.
 *
 * @param thicknessMm t, from 0.1 to 10 mm
 * @param insideBendRadiusMm Ri of the finished part, from 0 to 100 mm
 * @param kFactor k, the neutral surface's depth from the inside face as a fraction of t, 0 to 1
 * @param anisotropy R, the normal anisotropy (width strain over thickness strain), 0.1 to 5
 */
public record Sheet(
    double thicknessMm, double insideBendRadiusMm, double kFactor, double anisotropy) {

  /**
   * The k that makes {@code θ(Ri + k·t)} the handbook rule {@code (0.01743 R + 0.0078 T)} a degree:
   * FAA-H-8083-31, Aviation Maintenance Technician Handbook, Airframe vol. 1, ch. 4, bend
   * allowance. The handbook rounds π/180 = 0.017453 to 0.01743, which shortens its allowance by
   * 0.13 % of R.
   */
  public static final double DEFAULT_K_FACTOR = 0.0078 / (Math.PI / 180);

  /** Isotropic sheet. Aluminium sheet is often 0.6 to 0.8 (from memory), see docs/method.md. */
  public static final double DEFAULT_ANISOTROPY = 1;

  public Sheet {
    FormingInput.THICKNESS.check(thicknessMm);
    FormingInput.INSIDE_BEND_RADIUS.check(insideBendRadiusMm);
    FormingInput.K_FACTOR.check(kFactor);
    FormingInput.ANISOTROPY.check(anisotropy);
  }

  /**
   * A sheet as a workshop reckons with it.
   *
   * @param anisotropy of the metal, R; null where only the shop's value is known
   */
  public static Sheet of(
      double thicknessMm,
      double insideBendRadiusMm,
      @Nullable Double anisotropy,
      Practice practice) {
    return new Sheet(
        thicknessMm,
        insideBendRadiusMm,
        practice.kFactor(),
        anisotropy == null ? practice.anisotropy() : anisotropy);
  }

  /** A sheet with the default k and isotropic. */
  public static Sheet of(double thicknessMm, double insideBendRadiusMm) {
    return new Sheet(thicknessMm, insideBendRadiusMm, DEFAULT_K_FACTOR, DEFAULT_ANISOTROPY);
  }

  /** ρ = Ri + k·t, the radius of the neutral surface in the bend, mm. */
  double neutralRadiusMm() {
    return insideBendRadiusMm + kFactor * thicknessMm;
  }

  /** m = R/(1 + R), the share of a hoop strain that the width gives back, dimensionless. */
  double widthShare() {
    return anisotropy / (1 + anisotropy);
  }
}
