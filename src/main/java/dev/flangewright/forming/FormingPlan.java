package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * How to take a flange down at its hardest station: pass by pass, with the angle to stop at, and
 * where the metal wants softening.
 *
 * <pre>
 * FM-PLAN  pass j of n stops at the angle θ_j with ε_demand(θ_j) = j/n·ε_demand(θ)
 *          soften before the pass in which the strain since the last softening would pass
 *          {@link Practice#shareBeforeSoftening}·ε_u
 *          two sets of blocks when n &gt; {@link Practice#passesOnOneBlock}: the first to θ_1st with
 *          ε_demand(θ_1st) = ε_demand(θ)/2
 * ε_demand by FM-DEV at the peak station, n by FM-PASS, ε_u uniform strain of the temper (natural)
 * </pre>
 *
 * <p>ε_u is the strain-hardening exponent n of a metal that hardens by a power law (Considère's
 * criterion; Hosford and Caddell, Metal Forming, from memory). It is a tension limit; an edge that
 * shrinks hardens as much without necking, so the same mark tells when hammering stops paying. The
 * two defaults, 0.8 and 4, are shop defaults, no source. Neglected: ageing of a quenched alloy
 * while it is worked, which can end the work earlier.
 *
 * @param peakStation number of the station planned for
 * @param passes at least one
 * @param firstBlockAngleDeg bend angle of the first set of blocks; null when one set serves
 * @param softenings how often to soften; null when ε_u is unknown
 */
public record FormingPlan(
    int peakStation,
    List<Pass> passes,
    @Nullable Double firstBlockAngleDeg,
    @Nullable Integer softenings) {

  /**
   * One pass.
   *
   * @param number from 1
   * @param toAngleDeg where to stop, bend angle from flat
   * @param strainSoFar natural strain of the edge after the pass, signed
   * @param softenFirst whether to anneal, or solution-treat again, before the pass
   */
  public record Pass(int number, double toAngleDeg, double strainSoFar, boolean softenFirst) {}

  /**
   * Plans a flange by the default shop values.
   *
   * @param uniformStrain ε_u, above 0; null when unknown
   */
  public static FormingPlan of(FlangeFigures figures, Sheet sheet, @Nullable Double uniformStrain) {
    return of(figures, sheet, uniformStrain, Practice.DEFAULT);
  }

  /**
   * Plans a flange by a workshop's values, which the figures must have been computed with.
   *
   * @param uniformStrain ε_u, above 0; null when unknown
   */
  public static FormingPlan of(
      FlangeFigures figures, Sheet sheet, @Nullable Double uniformStrain, Practice practice) {
    var peak =
        figures.stations().stream()
            .filter(station -> station.number() == figures.peakStation())
            .findFirst()
            .orElseThrow();
    int count = figures.passes();
    var passes = new ArrayList<Pass>();
    double sinceSoft = 0;
    int softenings = 0;
    double step = Math.abs(peak.edgeStrain()) / count;
    for (int j = 1; j <= count; j++) {
      boolean soften =
          uniformStrain != null
              && sinceSoft > 0
              && sinceSoft + step > practice.shareBeforeSoftening() * uniformStrain;
      softenings += soften ? 1 : 0;
      sinceSoft = soften ? step : sinceSoft + step;
      double share = (double) j / count;
      passes.add(new Pass(j, angleAt(peak, sheet, share), share * peak.edgeStrain(), soften));
    }
    return new FormingPlan(
        peak.number(),
        List.copyOf(passes),
        count > practice.passesOnOneBlock() ? angleAt(peak, sheet, 0.5) : null,
        uniformStrain == null ? null : softenings);
  }

  /** The angle at which the edge has had a share of its demand, degrees. */
  private static double angleAt(StationFigures station, Sheet sheet, double share) {
    double angle = station.bendAngleDeg();
    if (share >= 1) {
      return angle;
    }
    return new BracketingNthOrderBrentSolver(1e-9, 1e-6, 5)
        .solve(
            200,
            theta -> strain(station, sheet, theta) / station.edgeStrain() - share,
            1e-6,
            angle);
  }

  private static double strain(StationFigures station, Sheet sheet, double angleDeg) {
    return FlangeSection.of(
            station.kind(), station.radiusMm(), sheet, station.flangeWidthMm(), angleDeg)
        .edgeStrain();
  }
}
