package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A flange laid flat: its blank edge, notched where it is cut out, and its tangent line.
 *
 * @param edge from the first to the last station
 * @param tangentLine the web's tangent line as if nothing were cut
 * @param bendLines the runs of the tangent line that are bent: none where a cutout goes through
 */
record DevelopedEdge(List<Point> edge, List<Point> tangentLine, List<List<Point>> bendLines) {

  static DevelopedEdge of(Contour contour, FlangeFigures figures) {
    var edge = new ArrayList<Point>();
    var tangentLine = new ArrayList<Point>();
    var bendLines = new ArrayList<List<Point>>();
    boolean bent = false;
    for (var piece : figures.pieces()) {
      var inner = piece.line(contour, station -> -station.setbackMm());
      edge.addAll(piece.line(contour, outer(piece)));
      join(tangentLine, inner);
      if (piece.hasMetal() && bent) {
        join(bendLines.get(bendLines.size() - 1), inner);
      } else if (piece.hasMetal()) {
        bendLines.add(new ArrayList<>(inner));
      }
      bent = piece.hasMetal();
    }
    return new DevelopedEdge(
        List.copyOf(edge),
        List.copyOf(tangentLine),
        bendLines.stream().<List<Point>>map(List::copyOf).toList());
  }

  private static ToDoubleFunction<StationFigures> outer(EdgePiece piece) {
    var cutout = piece.cutout();
    return cutout == null || cutout.leavesFlange()
        ? StationFigures::blankBeyondMouldLineMm
        : station -> cutout.bottomMm(station.setbackMm());
  }

  /** Two stretches of one line: the point where they meet stands once. */
  private static void join(List<Point> line, List<Point> next) {
    line.addAll(line.isEmpty() ? next : next.subList(1, next.size()));
  }
}
