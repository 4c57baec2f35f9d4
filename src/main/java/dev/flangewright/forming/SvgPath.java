package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;

/**
 * A contour drawn as an SVG path: the text of the attribute {@code d}, its units taken for
 * millimetres.
 *
 * <p>An SVG's y axis points down and a frame's up, so every y changes its sign: what turns
 * clockwise on the screen still does, and the web lies to the left of the path as one sees it
 * drawn. Lines, Bézier curves and arcs are evaluated exactly; transformations, units and viewBox of
 * the file are not looked at. Source: W3C SVG 2, section 9.3 (path data) and appendix B.2 (arcs).
 */
public final class SvgPath {

  /** A change of direction at a joint above this is a corner, and gets a station. */
  private static final double JOINT_RADIANS = Math.toRadians(0.5);

  private final List<List<PathMeasure>> runs = new ArrayList<>();

  private SvgPath(List<PathPart> parts) {
    PathMeasure before = null;
    for (var part : parts) {
      var measure = new PathMeasure(part);
      if (before == null || isCorner(before, measure)) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(measure);
      before = measure;
    }
  }

  private static boolean isCorner(PathMeasure before, PathMeasure after) {
    double turn = Math.IEEEremainder(after.heading(0) - before.heading(1), 2 * Math.PI);
    return Math.abs(turn) > JOINT_RADIANS;
  }

  /**
   * @param pathData up to 100 000 characters; one subpath, open or closed
   * @throws SvgPathException when it cannot be read, with the place in the text
   */
  public static SvgPath of(String pathData) {
    return new SvgPath(new SvgPathReader(pathData).parts());
  }

  /** Length along the path, mm. */
  public double lengthMm() {
    return runs.stream().mapToDouble(SvgPath::length).sum();
  }

  private static double length(List<PathMeasure> run) {
    return run.stream().mapToDouble(PathMeasure::lengthMm).sum();
  }

  /**
   * Stations on the path, numbered from 1: the ends and the corners, and evenly between them.
   *
   * @param spacingMm largest distance along the path between neighbours, 0.1 to 10 000 mm
   * @param bendAngleDeg of every station
   * @param widthMm of every station
   * @throws FormingException when they would be more than 2000, or a value is out of its range
   */
  public List<Station> stations(double spacingMm, double bendAngleDeg, double widthMm) {
    FormingInput.STATION_SPACING.check(spacingMm);
    double count = 1 + runs.stream().mapToDouble(run -> gaps(run, spacingMm)).sum();
    ContourCheck.count(count);
    var stations = new ArrayList<Station>();
    add(stations, runs.get(0).get(0).at(0), bendAngleDeg, widthMm);
    for (var run : runs) {
      double gaps = gaps(run, spacingMm);
      for (int i = 1; i <= gaps; i++) {
        add(stations, at(run, length(run) * i / gaps), bendAngleDeg, widthMm);
      }
    }
    return List.copyOf(stations);
  }

  private static double gaps(List<PathMeasure> run, double spacingMm) {
    return Math.max(1, Math.ceil(length(run) / spacingMm * (1 - 1e-12)));
  }

  private static Point at(List<PathMeasure> run, double length) {
    double left = length;
    int last = run.size() - 1;
    for (int i = 0; i < last; i++) {
      if (left <= run.get(i).lengthMm()) {
        return run.get(i).at(left);
      }
      left -= run.get(i).lengthMm();
    }
    return run.get(last).at(left);
  }

  private static void add(List<Station> stations, Point drawn, double angle, double width) {
    int number = stations.size() + 1;
    stations.add(new Station(number, drawn.xMm(), 0 - drawn.yMm(), angle, width));
  }
}
