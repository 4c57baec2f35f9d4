package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Fit;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.CutBlank;
import dev.flangewright.forming.PartDevelopment;
import dev.flangewright.forming.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The lines of a blank: the line to cut, the developed outline within it where an allowance is
 * left, and the smallest rectangle around it.
 */
record BlankLines(PartDevelopment blank, Fit fit, double foot) {

  private static final double LEFT = 108;

  /** All that has to find room on the paper. */
  static List<Point> points(PartDevelopment blank) {
    var points = new ArrayList<>(blank.outline());
    CutBlank cut = blank.cut();
    if (cut != null && !blank.closedByChord()) {
      points.addAll(cut.line());
      points.addAll(cut.rectangle().corners());
    }
    return points;
  }

  /** What is cut out, for who cannot see it; begins with a blank, or is empty. */
  static String said(PartDevelopment blank) {
    int holes = blank.holes().size();
    return holes == 0 ? "" : " %d hole%s in the web.".formatted(holes, holes == 1 ? "" : "s");
  }

  /**
   * The chord that closes a single flange is no line of the part, and what it cuts off no blank.
   */
  void draw(Svg svg) {
    List<Spot> corners = onPaper(blank.outline());
    CutBlank cut = blank.cut();
    if (blank.closedByChord()) {
      svg.path("d-joint", Lines.open(corners.get(corners.size() - 1), corners.get(0)));
      svg.path("d-outline", Lines.open(corners));
      return;
    }
    if (cut != null) {
      rectangle(svg, cut.rectangle());
    }
    if (cut != null && cut.allowanceMm() > 0) {
      svg.path("d-trimmed", Lines.closed(corners));
      svg.path("d-outline", Lines.closed(onPaper(cut.line())));
    } else {
      svg.path("d-outline", Lines.closed(corners));
    }
  }

  private void rectangle(Svg svg, CutBlank.SmallestRectangle rectangle) {
    svg.path("d-rectangle", Lines.closed(onPaper(rectangle.corners())));
    double y = foot + 161;
    svg.path("d-rectangle", Lines.open(new Spot(LEFT - 12, y), new Spot(LEFT + 6, y)));
    svg.label(
        new Spot(LEFT + 14, y + 6),
        Anchor.START,
        "Smallest rectangle %s × %s mm"
            .formatted(
                Numbers.figure(rectangle.lengthMm(), 1), Numbers.figure(rectangle.breadthMm(), 1)));
  }

  private List<Spot> onPaper(List<Point> points) {
    return points.stream().map(p -> fit.at(p.xMm(), p.yMm())).toList();
  }
}
