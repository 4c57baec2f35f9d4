package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Fit;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.PartDevelopment;
import dev.flangewright.forming.Point;
import dev.flangewright.parts.PartFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A part at true proportion in the axes of its frame: mould lines, bend lines, the line to cut,
 * holes and the smallest rectangle, and the strain along each edge as a comb with its peak on a
 * leader line.
 */
public final class SegmentDrawing {

  private static final double PAPER_WIDTH = 960;
  private static final double MOST_HEIGHT = 540;
  private static final double LEAST_HEIGHT = 90;
  private static final double KEY_HEIGHT = 191;
  private static final double LONGEST_TOOTH = 48;
  private static final double LEADER = 40;

  /** Lettering stands beside its leader line when that leans this much, else at its end. */
  private static final double LEANS = 0.35;

  private final PartDevelopment blank;
  private final Box paper;
  private final Box field;
  private final double foot;
  private final Fit fit;
  private final List<Comb> combs;

  private SegmentDrawing(List<FormedEdge> edges, PartDevelopment blank) {
    this.blank = blank;
    Box plan = plan(edges, blank);
    PeakRoom room = new PeakRoom(edges, plan);
    double right = PAPER_WIDTH - room.right();
    double scale =
        Math.min(
            (right - room.left()) / Math.max(1, plan.width()),
            MOST_HEIGHT / Math.max(1, plan.height()));
    double bottom = room.top() + Math.max(LEAST_HEIGHT, plan.height() * scale);
    this.field = new Box(room.left(), room.top(), right, bottom);
    this.foot = bottom + room.bottom();
    this.paper = Box.of(PAPER_WIDTH, foot + KEY_HEIGHT);
    this.fit = Fit.into(field, plan);
    double deepest = deepest(edges);
    double mmPerStrain = LONGEST_TOOTH / fit.scale() / deepest;
    this.combs = edges.stream().map(edge -> new Comb(edge, fit, mmPerStrain, deepest)).toList();
  }

  /**
   * @param id unique on the page
   * @return SVG for a page; empty when no flange of the part has a contour
   */
  public static String of(String id, String partNumber, PartFigures figures) {
    PartDevelopment blank = figures.development();
    return blank == null
        ? ""
        : of(id, partNumber, FormedEdge.of(figures), blank, Readings.of(figures));
  }

  static String of(String id, String partNumber, List<FormedEdge> edges, PartDevelopment blank) {
    return of(id, partNumber, edges, blank, Readings.NONE);
  }

  private static String of(
      String id,
      String partNumber,
      List<FormedEdge> edges,
      PartDevelopment blank,
      Readings readings) {
    return new SegmentDrawing(edges, blank).drawn(id, partNumber, edges, readings);
  }

  private String drawn(String id, String partNumber, List<FormedEdge> edges, Readings readings) {
    String title = "Part %s with its blank and the strain along its edges".formatted(partNumber);
    String said =
        edges.stream().map(FormedEdge::said).collect(Collectors.joining(" "))
            + BlankLines.said(blank)
            + readings.said(fit);
    Svg svg = Svg.picture(id, "drawing full sheet-wide", paper, title, said);
    new PlanGrid(field, foot, fit).draw(svg);
    new BlankLines(blank, fit, foot).draw(svg);
    blank.bendLines().forEach(line -> svg.path("d-bend", Lines.open(onPaper(line))));
    edges.forEach(edge -> svg.path("d-contour", Lines.open(onPaper(edge.contour().points()))));
    readings.draw(svg, fit);
    combs.forEach(comb -> comb.draw(svg));
    combs.forEach(comb -> new StationNumbers(comb).draw(svg));
    combs.forEach(comb -> peak(svg, comb));
    blank.holes().forEach(hole -> new HoleMark(hole, fit).draw(svg));
    new CombKey(foot, combs).draw(svg);
    return svg.written();
  }

  /** On the free side of the edge: from a shrinking tooth's tip, from a stretching tooth's foot. */
  private void peak(Svg svg, Comb comb) {
    if (comb.edge().peak() == 0) {
      return;
    }
    int i = comb.edge().peakIndex();
    Spot from = comb.edge().peak() < 0 ? comb.tip(i) : comb.foot(i);
    Spot away = comb.foot(i).directionTo(comb.outward(i, 1));
    Spot knee = from.moved(away, LEADER);
    svg.path("d-leader", Lines.open(from, knee));
    Anchor anchor =
        away.x() > LEANS ? Anchor.START : away.x() < -LEANS ? Anchor.END : Anchor.MIDDLE;
    double x = knee.x() + 6 * Math.signum(anchor == Anchor.MIDDLE ? 0 : away.x());
    double y = anchor != Anchor.MIDDLE ? knee.y() : knee.y() + (away.y() > 0 ? 24 : -34);
    svg.label(new Spot(x, y), anchor, Numbers.percent(comb.edge().peak()));
    svg.quiet(new Spot(x, y + 26), anchor, "station " + comb.edge().figures().peakStation());
  }

  private List<Spot> onPaper(List<Point> points) {
    return points.stream().map(p -> fit.at(p.xMm(), p.yMm())).toList();
  }

  private static Box plan(List<FormedEdge> edges, PartDevelopment blank) {
    var spots = new ArrayList<Spot>();
    BlankLines.points(blank).forEach(p -> spots.add(new Spot(p.xMm(), p.yMm())));
    for (FormedEdge edge : edges) {
      edge.contour().points().forEach(p -> spots.add(new Spot(p.xMm(), p.yMm())));
    }
    return Box.around(spots);
  }

  private static double deepest(List<FormedEdge> edges) {
    double peak = 0;
    for (FormedEdge edge : edges) {
      peak = Math.max(peak, Math.max(Math.abs(edge.peak()), edge.stretchInSight()));
    }
    return peak > 0 ? peak : 1;
  }
}
