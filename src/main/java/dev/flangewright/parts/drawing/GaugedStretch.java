package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Fit;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.Contour;
import dev.flangewright.forming.GaugedRest;
import dev.flangewright.forming.Point;
import dev.flangewright.forming.StationFigures;
import dev.flangewright.parts.GaugeReading;
import dev.flangewright.parts.PartFigures;
import java.util.ArrayList;
import java.util.List;

/**
 * Where on a part a gauge leaves something to do: its mould lines and the stretch, zone by zone.
 */
public final class GaugedStretch {

  private static final double PAPER_WIDTH = 960;
  private static final double MOST_HEIGHT = 360;
  private static final double LEAST_HEIGHT = 60;
  private static final double MARGIN = 96;
  private static final double LEADER = 40;

  private final GaugeReading reading;
  private final Fit fit;
  private final Box paper;

  private GaugedStretch(GaugeReading reading) {
    this.reading = reading;
    Box plan = Box.around(spots(reading.figures()));
    double scale =
        Math.min(
            (PAPER_WIDTH - 2 * MARGIN) / Math.max(1, plan.width()),
            MOST_HEIGHT / Math.max(1, plan.height()));
    double height = Math.max(LEAST_HEIGHT, plan.height() * scale) + 2 * MARGIN;
    this.paper = Box.of(PAPER_WIDTH, height);
    this.fit = Fit.into(new Box(MARGIN, MARGIN, PAPER_WIDTH - MARGIN, height - MARGIN), plan);
  }

  /**
   * @param id unique on the page
   * @return SVG for a page
   */
  public static String of(String id, GaugeReading reading) {
    return new GaugedStretch(reading).drawn(id);
  }

  private String drawn(String id) {
    String title = "Where part %s was gauged".formatted(reading.figures().part().partNumber());
    Svg svg = Svg.picture(id, "drawing full sheet-wide", paper, title, reading.sentence());
    for (PartFigures.OfFlange flange : reading.figures().flanges()) {
      svg.path("d-contour", Lines.open(onPaper(flange.contour().points())));
    }
    reading.left().zones().forEach(zone -> draw(svg, zone));
    letter(svg);
    return svg.written();
  }

  private void draw(Svg svg, GaugedRest.Zone zone) {
    Contour line = reading.flange().contour();
    svg.path("d-left", Lines.open(onPaper(between(line, zone.fromMm(), zone.toMm()))));
    Spot from = outward(zone.fromMm(), -8);
    svg.path("d-leader", Lines.open(from, outward(zone.fromMm(), 8)));
    svg.path("d-leader", Lines.open(outward(zone.toMm(), -8), outward(zone.toMm(), 8)));
  }

  private void letter(Svg svg) {
    GaugedRest left = reading.left();
    double middle = (left.fromMm() + left.toMm()) / 2;
    Spot knee = outward(middle, LEADER);
    boolean toTheRight = knee.x() >= outward(middle, 0).x();
    svg.path("d-leader", Lines.open(outward(middle, 6), knee));
    svg.label(
        new Spot(knee.x() + (toTheRight ? 8 : -8), knee.y() + 5),
        toTheRight ? Anchor.START : Anchor.END,
        left.passes() == 0
            ? "nothing left"
            : Numbers.figure(left.rest().millimetres(), 1) + " mm " + left.error().left());
    station(svg, reading.first());
    station(svg, reading.last());
  }

  private void station(Svg svg, StationFigures station) {
    Spot at = outward(station.arcMm(), -22);
    svg.quiet(new Spot(at.x(), at.y() + 5), Anchor.MIDDLE, String.valueOf(station.number()));
  }

  /** A spot beside the gauged edge, on its free side by drawing units. */
  private Spot outward(double arcMm, double units) {
    Contour line = reading.flange().contour();
    int after = after(line, arcMm);
    double share = share(line, after, arcMm);
    Point a = line.offset(after - 1, units / fit.scale());
    Point b = line.offset(after, units / fit.scale());
    return fit.at(mix(a.xMm(), b.xMm(), share), mix(a.yMm(), b.yMm(), share));
  }

  private static List<Point> between(Contour line, double fromMm, double toMm) {
    var points = new ArrayList<Point>();
    points.add(at(line, fromMm));
    for (int i = 0; i < line.points().size(); i++) {
      if (line.arcMm(i) > fromMm && line.arcMm(i) < toMm) {
        points.add(line.points().get(i));
      }
    }
    points.add(at(line, toMm));
    return points;
  }

  private static Point at(Contour line, double arcMm) {
    int after = after(line, arcMm);
    double share = share(line, after, arcMm);
    Point a = line.points().get(after - 1);
    Point b = line.points().get(after);
    return new Point(mix(a.xMm(), b.xMm(), share), mix(a.yMm(), b.yMm(), share));
  }

  private static int after(Contour line, double arcMm) {
    int i = 1;
    while (i < line.points().size() - 1 && line.arcMm(i) < arcMm) {
      i++;
    }
    return i;
  }

  private static double share(Contour line, int after, double arcMm) {
    double from = line.arcMm(after - 1);
    return Math.max(0, Math.min(1, (arcMm - from) / (line.arcMm(after) - from)));
  }

  private static double mix(double a, double b, double share) {
    return a + share * (b - a);
  }

  private List<Spot> onPaper(List<Point> points) {
    return points.stream().map(p -> fit.at(p.xMm(), p.yMm())).toList();
  }

  private static List<Spot> spots(PartFigures figures) {
    return figures.flanges().stream()
        .flatMap(flange -> flange.contour().points().stream())
        .map(p -> new Spot(p.xMm(), p.yMm()))
        .toList();
  }
}
