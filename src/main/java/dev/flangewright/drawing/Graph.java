package dev.flangewright.drawing;

import java.util.List;
import java.util.stream.IntStream;

/** A graph's paper, scales and axes; values along x, figures along y. */
public final class Graph {

  public static final double WIDTH = 640;
  public static final double HEIGHT = 384;

  private static final Box PLOT = new Box(86, 56, 616, 300);
  private static final int MARKS_ACROSS = 5;
  private static final int MARKS_UP = 5;

  private final Scale x;
  private final Scale y;

  /** Over a range of values and a range of figures. */
  public Graph(double fromX, double toX, double fromY, double toY) {
    this.x = new Scale(fromX, toX, PLOT.minX(), PLOT.maxX());
    this.y = new Scale(fromY, toY, PLOT.maxY(), PLOT.minY());
  }

  public static Box paper() {
    return Box.of(WIDTH, HEIGHT);
  }

  public Box plot() {
    return PLOT;
  }

  public Spot at(double xValue, double yValue) {
    return new Spot(x.at(xValue), y.at(yValue));
  }

  /** Grid, axes and their words, each with its unit. */
  public void axes(Svg svg, String alongX, String alongY) {
    for (double mark : y.marks(MARKS_UP)) {
      svg.path("d-grid", level(mark));
      svg.quiet(
          new Spot(PLOT.minX() - 10, y.at(mark) + 5),
          Anchor.END,
          Numbers.figure(mark, y.decimals(MARKS_UP)));
    }
    for (double mark : x.marks(MARKS_ACROSS)) {
      Spot at = new Spot(x.at(mark), PLOT.maxY());
      svg.path("d-axis", Lines.open(at, new Spot(at.x(), at.y() + 6)));
      svg.quiet(
          new Spot(at.x(), at.y() + 28),
          Anchor.MIDDLE,
          Numbers.figure(mark, x.decimals(MARKS_ACROSS)));
    }
    svg.path("d-axis", level(y.from()));
    svg.label(new Spot(0, 26), Anchor.START, alongY);
    svg.label(new Spot(PLOT.maxX(), HEIGHT - 16), Anchor.END, alongX);
  }

  /** Path data of a line at one figure, across the whole graph. */
  public String level(double yValue) {
    return Lines.open(at(x.from(), yValue), at(x.to(), yValue));
  }

  /** Path data of a curve through values and their figures. */
  public String curve(List<Double> values, List<Double> figures) {
    return Lines.open(
        IntStream.range(0, values.size())
            .mapToObj(i -> at(values.get(i), figures.get(i)))
            .toList());
  }

  /** Marks a point with a ring, its lettering above or below it and inside the graph. */
  public void peak(Svg svg, double xValue, double yValue, boolean above, String words) {
    ring(svg, xValue, yValue);
    words(svg, xValue, at(xValue, yValue).y() + (above ? -12 : 26), words);
  }

  /** Marks a point with a ring. */
  public void ring(Svg svg, double xValue, double yValue) {
    Spot spot = at(xValue, yValue);
    svg.draw("circle", "class", "d-peak", "cx", spot.x(), "cy", spot.y(), "r", 5);
  }

  /** Lettering over a value at a height on the paper, inside the graph. */
  public void words(Svg svg, double xValue, double paperY, String words) {
    double x = at(xValue, 0).x();
    double share = (x - PLOT.minX()) / PLOT.width();
    Anchor anchor = share < 0.33 ? Anchor.START : share > 0.67 ? Anchor.END : Anchor.MIDDLE;
    svg.label(new Spot(x, paperY), anchor, words);
  }
}
