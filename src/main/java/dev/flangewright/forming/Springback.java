package dev.flangewright.forming;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * How much a bend opens when it leaves the block, and the block that allows for it.
 *
 * <pre>
 * FM-SPRING Ri/Rf = 4x³ − 3x + 1,  x = Ri·Y/(E·t)
 * FM-BLOCK  θ_block = θ·(Rf + t/2)/(Ri + t/2)
 * Ri inside radius on the block (mm), Rf inside radius of the part after release (mm), Y proof
 * stress (MPa), E Young's modulus (MPa), t thickness (mm), θ bend angle of the part
 * </pre>
 *
 * <p>Valid for 0 ≤ x ≤ 0.5 (at 0.5 the bend springs back flat). Source: Kalpakjian and Schmid,
 * Manufacturing Engineering and Technology, SI 6th ed. (2009), ch. 16. FM-BLOCK follows from the
 * bend keeping the length of its middle surface: derived. Neglected: hardening of the metal and the
 * hoop stress of a curved flange; hand-formed flanges spring back more than this, so the block
 * angle errs low: prove it on a trial piece.
 */
public final class Springback {

  /** x at which a bend springs back completely. */
  static final double FULL_RECOVERY = 0.5;

  private Springback() {}

  /** Ri/Rf for x from 0 to 0.5; beyond that 0, the bend springs back flat. */
  public static double ratio(double x) {
    double used = Math.min(Math.max(x, 0), FULL_RECOVERY);
    return Math.max(0, (4 * used * used - 3) * used + 1);
  }

  /**
   * Rf, the part's inside radius after release from a block; infinite when it springs back flat.
   */
  public static double partRadiusMm(
      double blockRadiusMm, double thicknessMm, double proofMpa, double youngMpa) {
    return blockRadiusMm == 0
        ? 0
        : blockRadiusMm / ratio(blockRadiusMm * proofMpa / (youngMpa * thicknessMm));
  }

  /** Ri, the block's radius that gives the wanted inside radius of the part; never larger. */
  public static double blockRadiusMm(
      double partRadiusMm, double thicknessMm, double proofMpa, double youngMpa) {
    if (partRadiusMm == 0) {
      return 0;
    }
    double perMm = proofMpa / (youngMpa * thicknessMm);
    double high = Math.min(partRadiusMm, FULL_RECOVERY / perMm);
    return new BracketingNthOrderBrentSolver(1e-12, 1e-9, 5)
        .solve(100, r -> r - partRadiusMm * ratio(r * perMm), 0, high);
  }

  /** θ_block for a bend that is to have the angle θ at the part radius, same unit as the angle. */
  public static double blockAngle(
      double partAngle, double partRadiusMm, double blockRadiusMm, double thicknessMm) {
    return partAngle * (partRadiusMm + thicknessMm / 2) / (blockRadiusMm + thicknessMm / 2);
  }

  /** Block radius for a sheet whose radius is the part's; null when Y or E is unknown. */
  public static @Nullable Double blockRadiusMm(Sheet sheet, MetalValues metal) {
    var proof = metal.proofMpa();
    var young = metal.youngMpa();
    if (proof == null || young == null) {
      return null;
    }
    return blockRadiusMm(sheet.insideBendRadiusMm(), sheet.thicknessMm(), proof, young);
  }
}
