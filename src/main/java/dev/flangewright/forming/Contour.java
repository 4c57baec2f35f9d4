package dev.flangewright.forming;

import java.util.List;
import java.util.function.Function;

/**
 * The outer mould line of a flange as stations from the loft; the web lies to the left of travel,
 * so a contour that turns left is a shrink and one that turns right a stretch. Immutable.
 */
public final class Contour {

  private final List<Station> stations;
  private final List<Point> points;
  private final Curvature curvature;
  private final RunSplit split;

  private Contour(Contour line, List<Station> stations) {
    this.stations = stations;
    this.points = line.points;
    this.curvature = line.curvature;
    this.split = line.split;
  }

  private Contour(List<Station> stations, Function<List<Point>, Curvature> curvature) {
    this.stations = stations;
    this.points = stations.stream().map(Station::point).toList();
    ContourCheck.check(stations, points);
    this.curvature = curvature.apply(points);
    this.split = RunSplit.of(points, this.curvature);
  }

  /**
   * @param stations 2 to 2000, in travel order; two make a straight line
   * @throws FormingException when the stations are too few or too many, their numbers do not rise,
   *     neighbours coincide or the contour crosses itself
   */
  public static Contour of(List<Station> stations) {
    return new Contour(List.copyOf(stations), Curvature::new);
  }

  /**
   * The stations moved onto the fair curve of {@link FairFit}; at tolerance 0 the stations as they
   * are.
   *
   * @param toleranceMm from 0 to 5
   * @throws FormingException as {@link FairFit#of}
   */
  public static Contour fitted(List<Station> stations, double toleranceMm) {
    return FairFit.of(stations, toleranceMm).contour();
  }

  /** A contour whose arc length and curvature are known better than from its stations. */
  static Contour known(List<Station> stations, double[] arcs, double[] curvatures) {
    return new Contour(List.copyOf(stations), points -> new Curvature(points, arcs, curvatures));
  }

  /**
   * The same line with a flange that is nowhere wider than that.
   *
   * @param widthMm to the outer mould line, above 0, up to 500
   */
  public Contour trimmedTo(double widthMm) {
    return new Contour(this, stations.stream().map(s -> s.trimmedTo(widthMm)).toList());
  }

  public List<Station> stations() {
    return stations;
  }

  /** FM-ARC: length along the mould line from the first station to the i-th (from 0), mm. */
  public double arcMm(int i) {
    return curvature.arcMm(i);
  }

  /** Length of the whole mould line, mm. */
  public double lengthMm() {
    return arcMm(stations.size() - 1);
  }

  /** FM-CURV at the i-th station, 1/mm: positive = left = shrink, 0 in a run that is straight. */
  public double curvaturePerMm(int i) {
    return kindAt(i) == FlangeKind.PLAIN ? 0 : curvature.perMm(i);
  }

  /** Radius at the i-th station, mm, always positive; infinite where the contour is straight. */
  public double radiusMm(int i) {
    return 1 / Math.abs(curvaturePerMm(i));
  }

  /** SHRINK, STRETCH or PLAIN: the kind of the run that the i-th station belongs to. */
  public FlangeKind kindAt(int i) {
    return split.kindAt(i);
  }

  /** The kind of the whole: MIXED when it has shrinking and stretching runs. */
  public FlangeKind kind() {
    return split.kind();
  }

  /** The runs of one kind each, in travel order. */
  public List<ContourRun> runs() {
    return split.runs(this);
  }

  /** The mould-line points, mm. */
  public List<Point> points() {
    return points;
  }

  /**
   * The i-th station moved at right angles to the contour, mm; positive is to the right of travel,
   * away from the web.
   */
  public Point offset(int i, double outwardMm) {
    return points.get(i).toTheRight(heading(i), outwardMm);
  }

  /**
   * Direction of travel at the i-th station, radians: the directions of the two chords weighted by
   * the other's length, which is the tangent of the circle through them; at an end the chord turned
   * by half the arc it spans.
   */
  private double heading(int i) {
    int last = points.size() - 1;
    if (i == 0) {
      return chord(0) - curvaturePerMm(0) * arcMm(1) / 2;
    }
    if (i == last) {
      return chord(last - 1) + curvaturePerMm(last) * (arcMm(last) - arcMm(last - 1)) / 2;
    }
    double before = arcMm(i) - arcMm(i - 1);
    double after = arcMm(i + 1) - arcMm(i);
    double turn = Math.IEEEremainder(chord(i) - chord(i - 1), 2 * Math.PI);
    return chord(i - 1) + turn * before / (before + after);
  }

  private double chord(int i) {
    return points.get(i).headingTo(points.get(i + 1));
  }
}
