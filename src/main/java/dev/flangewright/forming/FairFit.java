package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A fair curve through digitised stations, with the fewest degrees of freedom that a tolerance
 * allows.
 *
 * <p>FM-FIT: between {@link Corner}s the curvature is a broken line over the arc length, {@code
 * κ(s)} linear between knots and constant beyond the outer ones, so that the curve is a chain of
 * clothoids, arcs and straight runs. Straight line, circle, two knots, three and so on are fitted
 * by least squares of the perpendicular deviations ({@link SpiralFit}), the knots where they serve
 * best ({@link KnotSearch}); the first fit is taken that 95 % of the stations lie within the
 * tolerance of and all within one and a half times it. Then every knot whose curvature may be zero
 * within that rule is set to zero: a straight run stays straight. Degrees of freedom: two for place
 * and direction, one for each curvature not zero, for every piece between corners; the places of
 * the knots are not counted.
 *
 * <p>Holds for stations whose scatter is below the tolerance: twice the largest error of a reading,
 * or three standard deviations, is a good one. Neglected: a bend that a tolerance can hide, about
 * 8·tolerance/L² of curvature over a run of length L; a smooth peak of curvature is met by a corner
 * of the broken line, which errs high by some per cent. Derived; the rule of 95 % and 1.5 is a shop
 * default, no source.
 *
 * @param contour the stations moved onto the fit, with the fit's curvature; at tolerance 0 the
 *     contour through the stations as they are
 * @param toleranceMm as set
 * @param stations one for every station, in the same order
 * @param corners where the contour was split, in travel order
 * @param maxDeviationMm largest deviation, never negative
 * @param rmsDeviationMm root mean square of the deviations
 * @param degreesOfFreedom used by the fit; at tolerance 0 two for every station
 */
public record FairFit(
    Contour contour,
    double toleranceMm,
    List<FitStation> stations,
    List<Corner> corners,
    double maxDeviationMm,
    double rmsDeviationMm,
    int degreesOfFreedom) {

  /**
   * @param stations 2 to 2000, in travel order
   * @param toleranceMm from 0 (the stations are exact) to 5
   * @throws FormingException when the stations make no contour, the tolerance is out of range, or
   *     no fair curve comes within it, naming the station that lies farthest off
   */
  public static FairFit of(List<Station> stations, double toleranceMm) {
    FormingInput.FIT_TOLERANCE.check(toleranceMm);
    return toleranceMm == 0 ? exact(stations) : fair(List.copyOf(stations), toleranceMm);
  }

  /** The station farthest off; the first where all are exact. */
  public FitStation worst() {
    return stations.stream()
        .max(Comparator.comparingDouble(station -> Math.abs(station.deviationMm())))
        .orElseThrow();
  }

  /** The share of the stations that lie within the tolerance, from 0 to 1. */
  public double shareWithin() {
    long within = stations.stream().filter(s -> Math.abs(s.deviationMm()) <= toleranceMm).count();
    return (double) within / stations.size();
  }

  private static FairFit exact(List<Station> stations) {
    var contour = Contour.of(stations);
    var fits = new ArrayList<FitStation>();
    for (int i = 0; i < stations.size(); i++) {
      var point = contour.points().get(i);
      double perMm = contour.curvaturePerMm(i);
      fits.add(new FitStation(stations.get(i).number(), point, point, 0, perMm, perMm, perMm));
    }
    var corners = Corners.of(contour.stations(), 0);
    return new FairFit(contour, 0, List.copyOf(fits), corners, 0, 0, 2 * stations.size());
  }

  private static FairFit fair(List<Station> stations, double tolerance) {
    ContourCheck.checkAsRead(stations);
    var corners = Corners.of(stations, tolerance);
    var pieces = FitPieces.of(stations, corners, tolerance);
    var fits = pieces.stations();
    return new FairFit(
        pieces.contour(),
        tolerance,
        fits,
        corners,
        fits.stream().mapToDouble(f -> Math.abs(f.deviationMm())).max().getAsDouble(),
        Math.sqrt(
            fits.stream()
                .mapToDouble(f -> f.deviationMm() * f.deviationMm())
                .average()
                .getAsDouble()),
        pieces.degreesOfFreedom());
  }
}
