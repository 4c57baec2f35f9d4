package dev.flangewright.forming;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * A curved flange as an axisymmetric membrane, for comparison with FM-DEV, which lets the hoop
 * stress act alone. Unknown are the blank radius r0(s) and the meridian force N = r·t·σs:
 *
 * <pre>
 * dr0/ds = ±exp(−εs)      d(r·t·σs)/ds = t·σθ·dr/ds      εθ = ln(r/r0)
 * r0 = r at the tangent line (the web is clamped between the blocks and does not give)
 * σs = 0 at the free edge
 * </pre>
 *
 * <p>r(s) is the formed meridian of FM-DEV, given. Equilibrium holds along the meridian: pressure
 * of block and mallet act at right angles to it, friction is left out, and so is bending. Solved by
 * shooting from the free edge with a general-purpose integrator and root finder (Hipparchus).
 */
final class MembraneFlange {

  private final int side;
  private final double tangentRadius;
  private final double rho;
  private final double theta;
  private final double length;
  private final HardeningSheet metal;

  MembraneFlange(FlangeSection section, Sheet sheet, double thetaDeg, double widthMm, double n) {
    this.side = section.kind() == FlangeKind.SHRINK ? 1 : -1;
    this.tangentRadius = section.tangentRadiusMm();
    this.rho = sheet.neutralRadiusMm();
    this.theta = Math.toRadians(thetaDeg);
    this.length = section.bendAllowanceMm() + widthMm - section.setbackMm();
    this.metal = new HardeningSheet(n, sheet.anisotropy());
  }

  /** The blank radius of the free edge, mm, sought near the given one. */
  double blankEdgeRadiusMm(double near) {
    double reach = 0.3 * Math.abs(near - formedRadiusMm(length)) + 0.01;
    var solver = new BracketingNthOrderBrentSolver(1e-12, 1e-9, 5);
    return solver.solve(
        100, r0 -> atTangentLine(r0)[0] - tangentRadius, near - reach, near + reach);
  }

  double edgeStrain(double blankEdgeRadius) {
    return Math.log(formedRadiusMm(length) / blankEdgeRadius);
  }

  /** σs at the tangent line in units of K: what the web has to hold. */
  double pullOnTheWeb(double blankEdgeRadius) {
    double[] root = atTangentLine(blankEdgeRadius);
    return root[1] / root[0];
  }

  /** Arc position from the tangent line, mm. */
  double formedRadiusMm(double s) {
    double bend = rho * theta;
    double inBend = rho * Math.sin(Math.min(s, bend) / rho);
    return tangentRadius + side * (inBend + Math.max(0, s - bend) * Math.cos(theta));
  }

  private double slope(double s) {
    return side * Math.cos(Math.min(theta, s / rho));
  }

  /** r0 and N at the tangent line when the edge has the given blank radius. */
  private double[] atTangentLine(double blankEdgeRadius) {
    double bend = rho * theta;
    double[] edge = {blankEdgeRadius, 0};
    return integrate(bend, 0, integrate(length, bend, edge));
  }

  private double[] integrate(double from, double to, double[] start) {
    if (from - to < 1e-9) {
      return start;
    }
    var integrator = new DormandPrince853Integrator(1e-12, from - to, 1e-9, 1e-9);
    return integrator.integrate(new Meridian(), new ODEState(from, start), to).getPrimaryState();
  }

  /** Blank radii at evenly spaced arc positions from the tangent line to the edge. */
  double[] blankRadiiMm(double blankEdgeRadius, int steps) {
    double[] radii = new double[steps + 1];
    double[] state = {blankEdgeRadius, 0};
    for (int i = steps; i >= 0; i--) {
      radii[i] = state[0];
      double from = length * i / steps;
      double to = length * Math.max(0, i - 1) / steps;
      double bend = Math.min(from, Math.max(to, rho * theta));
      state = integrate(bend, to, integrate(from, bend, state));
    }
    return radii;
  }

  /** Work of forming, by elements, when the metal at the given blank radii has been moved along. */
  double work(double[] blankRadii, DoubleUnaryOperator moved) {
    int steps = blankRadii.length - 1;
    double work = 0;
    for (int i = 0; i < steps; i++) {
      double from = length * i / steps + moved.applyAsDouble((double) i / steps);
      double to = length * (i + 1) / steps + moved.applyAsDouble((i + 1.0) / steps);
      double blank = Math.abs(blankRadii[i + 1] - blankRadii[i]);
      double blankRadius = (blankRadii[i] + blankRadii[i + 1]) / 2;
      double hoop = Math.log(formedRadiusMm((from + to) / 2) / blankRadius);
      var strains = new HardeningSheet.Strains(hoop, Math.log((to - from) / blank));
      work += metal.work(strains) * blankRadius * blank;
    }
    return work;
  }

  /** dr0/ds and dN/ds. */
  private final class Meridian implements OrdinaryDifferentialEquation {

    @Override
    public int getDimension() {
      return 2;
    }

    @Override
    public double[] computeDerivatives(double s, double[] y) {
      double r = formedRadiusMm(s);
      var strains = metal.under(Math.log(r / y[0]), y[1] / r);
      double pull = strains.thickness() * metal.hoopStress(strains) * slope(s);
      return new double[] {side * Math.exp(-strains.meridian()), pull};
    }
  }
}
