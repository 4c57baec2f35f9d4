package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where a contour changes direction abruptly.
 *
 * <pre>
 * FM-CORNER  turn = β₊ − β₋     corner when |turn| > max(15°, 4·√(s₊² + s₋²))
 * β± direction at the station of the parabola through the stations within a reach after or before
 * it, s± its standard error (rad) for readings with a standard deviation of half the tolerance
 * </pre>
 *
 * <p>The reach is 20 mm, or 60 times the tolerance where that is more, and at least two stations;
 * of several candidates within a reach the largest counts. Stations nearer to an end than two are
 * not looked at. An arc that turns 15° within less than a reach looks like a corner, and is better
 * treated as one. Angle, reach and factor are shop defaults, no source.
 */
final class Corners {

  private static final double TURN = Math.toRadians(15);
  private static final double ERRORS = 4;
  private static final double REACH_MM = 20;
  private static final double REACH_TOLERANCES = 60;
  private static final int AT_LEAST = 2;

  private final List<Point> points;
  private final double reach;
  private final double scatter;

  private record Candidate(int station, double turn) {}

  private record Direction(double heading, double error) {}

  private Corners(List<Point> points, double tolerance) {
    this.points = points;
    this.reach = Math.max(REACH_MM, REACH_TOLERANCES * tolerance);
    this.scatter = tolerance / 2;
  }

  /** In travel order. */
  static List<Corner> of(List<Station> stations, double tolerance) {
    var corners = new Corners(stations.stream().map(Station::point).toList(), tolerance);
    return corners.sharpest(corners.candidates()).stream()
        .sorted(Comparator.comparingInt(Candidate::station))
        .map(c -> new Corner(stations.get(c.station).number(), Math.toDegrees(c.turn)))
        .toList();
  }

  private List<Candidate> candidates() {
    var candidates = new ArrayList<Candidate>();
    for (int i = AT_LEAST; i < points.size() - AT_LEAST; i++) {
      var before = direction(i, -1);
      var after = direction(i, +1);
      double turn = Math.IEEEremainder(after.heading - before.heading + Math.PI, 2 * Math.PI);
      double unsure = ERRORS * Math.hypot(before.error, after.error);
      if (Math.abs(turn) > Math.max(TURN, unsure)) {
        candidates.add(new Candidate(i, turn));
      }
    }
    return candidates;
  }

  private List<Candidate> sharpest(List<Candidate> candidates) {
    var kept = new ArrayList<Candidate>();
    candidates.stream()
        .sorted(Comparator.comparingDouble(c -> -Math.abs(c.turn)))
        .filter(c -> kept.stream().allMatch(k -> farApart(k.station, c.station)))
        .forEach(kept::add);
    return kept;
  }

  private boolean farApart(int one, int other) {
    return Math.abs(one - other) > AT_LEAST
        && points.get(one).distanceMm(points.get(other)) > reach;
  }

  /** The direction in which the contour leaves a station, forwards or backwards. */
  private Direction direction(int station, int step) {
    var here = points.get(station);
    int end = station + AT_LEAST * step;
    while (end + step >= 0
        && end + step < points.size()
        && here.distanceMm(points.get(end + step)) <= reach) {
      end += step;
    }
    double chord = here.headingTo(points.get(end));
    double length = here.distanceMm(points.get(end));
    var rows = new ArrayList<double[]>();
    var offsets = new ArrayList<Double>();
    for (int i = station; i != end + step; i += step) {
      double distance = here.distanceMm(points.get(i));
      double angle = i == station ? 0 : here.headingTo(points.get(i)) - chord;
      double along = distance * Math.cos(angle) / length;
      rows.add(new double[] {1, along, along * along});
      offsets.add(distance * Math.sin(angle) / length);
    }
    var parabola =
        new LeastSquares(
            rows.toArray(double[][]::new),
            offsets.stream().mapToDouble(Double::doubleValue).toArray());
    double error = scatter / length * Math.sqrt(parabola.variance(new double[] {0, 1, 0}));
    return new Direction(chord + Math.atan(parabola.solution()[1]), error);
  }
}
