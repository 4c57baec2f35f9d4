package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.operation.valid.IsValidOp;

/** A closed polygon made of flange edges, with what can be said of it. */
record Outline(List<Point> corners, @Nullable Double areaMm2, @Nullable String problem) {

  /** The edges in travel order, each next one starting nearest to where the last ended. */
  static Outline through(List<List<Point>> edges) {
    var left = new ArrayList<>(edges);
    var corners = new ArrayList<Point>(left.remove(0));
    while (!left.isEmpty()) {
      var end = corners.get(corners.size() - 1);
      var next = left.stream().min(Comparator.comparingDouble(e -> e.get(0).distanceMm(end))).get();
      left.remove(next);
      corners.addAll(next);
    }
    return of(List.copyOf(corners));
  }

  private static Outline of(List<Point> corners) {
    if (corners.size() < 3) {
      return new Outline(
          corners,
          null,
          "One straight flange alone does not enclose a blank; add the other edges.");
    }
    var problem = problem(corners);
    return new Outline(
        corners, problem == null ? Area.ofRing(Shapes.ring(corners)) : null, problem);
  }

  private static @Nullable String problem(List<Point> corners) {
    var fault = new IsValidOp(Shapes.polygon(corners)).getValidationError();
    if (fault != null) {
      var place = fault.getCoordinate();
      return "The developed outline crosses or touches itself near x %s mm, y %s mm."
          .formatted(Range.plain(place.x), Range.plain(place.y));
    }
    return Area.ofRingSigned(Shapes.ring(corners)) > 0
        ? "The developed outline runs clockwise, so the web would lie to the right of travel: check the"
            + " order of the stations, or add the part's other flanges."
        : null;
  }

  PartDevelopment.Bounds bounds() {
    var xs = corners.stream().mapToDouble(Point::xMm).summaryStatistics();
    var ys = corners.stream().mapToDouble(Point::yMm).summaryStatistics();
    return new PartDevelopment.Bounds(xs.getMin(), ys.getMin(), xs.getMax(), ys.getMax());
  }
}
