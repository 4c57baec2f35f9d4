package dev.flangewright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Causes by how often they struck, most first, with the line that adds them up: bars and line share
 * one scale, from nothing to all.
 */
public final class ParetoChart {

  /** A cause and how often it struck. */
  public record Cause(String name, int count) {}

  private static final double WIDTH = 640;
  private static final double PLOT_FROM = 262;
  private static final double PLOT_TO = 596;
  private static final double TOP = 50;
  private static final double ROW = 66;
  private static final double BAR = 30;
  private static final int MOST_ROWS = 8;
  private static final int LETTERS_A_LINE = 23;

  private final List<Cause> causes;
  private final Scale scale;
  private final double bottom;

  private ParetoChart(List<Cause> causes) {
    this.causes = causes;
    this.scale = new Scale(0, total(causes), PLOT_FROM, PLOT_TO);
    this.bottom = TOP + ROW * causes.size();
  }

  /**
   * @param id unique on the page
   * @param title what was counted, such as "Scrapped pieces by cause"
   * @param unit what one is called, such as "pieces"
   * @return SVG for a page; empty when nothing was counted
   */
  public static String of(String id, String title, String unit, List<Cause> causes) {
    List<Cause> ranked = ranked(causes);
    return ranked.isEmpty() ? "" : new ParetoChart(ranked).drawn(id, title, unit);
  }

  /** Most first; what goes beyond the rows that can be read becomes one row. */
  private static List<Cause> ranked(List<Cause> causes) {
    List<Cause> all =
        causes.stream()
            .filter(cause -> cause.count > 0)
            .sorted(Comparator.comparingInt(Cause::count).reversed().thenComparing(Cause::name))
            .toList();
    if (all.size() <= MOST_ROWS) {
      return all;
    }
    List<Cause> rest = all.subList(MOST_ROWS - 1, all.size());
    List<Cause> ranked = new ArrayList<>(all.subList(0, MOST_ROWS - 1));
    ranked.add(new Cause("%d other causes".formatted(rest.size()), total(rest)));
    return ranked;
  }

  private static int total(List<Cause> causes) {
    return causes.stream().mapToInt(Cause::count).sum();
  }

  private String drawn(String id, String title, String unit) {
    String said =
        causes.stream()
            .map(cause -> cause.name + " " + cause.count)
            .collect(Collectors.joining(", ", total(causes) + " " + unit + ": ", "."));
    Box paper = Box.of(WIDTH, bottom + 50);
    Svg svg = Svg.picture(id, "drawing full column-wide", paper, title, said);
    axes(svg, unit);
    for (int i = 0; i < causes.size(); i++) {
      bar(svg, i);
    }
    addedUp(svg);
    return svg.written();
  }

  private void axes(Svg svg, String unit) {
    for (int quarter = 0; quarter <= 4; quarter++) {
      double x = PLOT_FROM + (PLOT_TO - PLOT_FROM) * quarter / 4;
      svg.path(
          quarter == 0 ? "d-axis" : "d-grid",
          Lines.open(new Spot(x, TOP - 6), new Spot(x, bottom)));
      if (quarter % 2 == 0) {
        svg.quiet(new Spot(x, TOP - 16), Anchor.MIDDLE, 25 * quarter + " %");
      }
    }
    svg.quiet(
        new Spot(0, bottom + 32),
        Anchor.START,
        "Bars: number of " + unit + ". Line: added up, in per cent.");
  }

  private void bar(Svg svg, int row) {
    Cause cause = causes.get(row);
    double middle = middle(row);
    name(svg, cause.name, middle);
    svg.draw(
        "rect",
        "class",
        "d-column",
        "x",
        PLOT_FROM,
        "y",
        middle - BAR / 2,
        "width",
        scale.at(cause.count) - PLOT_FROM,
        "height",
        BAR);
    svg.label(new Spot(PLOT_FROM - 8, middle + 6), Anchor.END, String.valueOf(cause.count));
  }

  private void name(Svg svg, String name, double middle) {
    List<String> lines = Wrapped.lines(name, LETTERS_A_LINE - 4, 2);
    double first = middle + (lines.size() == 1 ? 6 : -6);
    for (int i = 0; i < lines.size(); i++) {
      svg.label(new Spot(0, first + 24 * i), Anchor.START, lines.get(i));
    }
  }

  private void addedUp(Svg svg) {
    List<Spot> line = new ArrayList<>();
    int sum = 0;
    for (int i = 0; i < causes.size(); i++) {
      sum += causes.get(i).count;
      line.add(new Spot(scale.at(sum), middle(i)));
    }
    svg.path("d-under", Lines.open(line));
    svg.path("d-curve", Lines.open(line));
    for (Spot dot : line) {
      svg.draw("circle", "class", "d-dot", "cx", dot.x(), "cy", dot.y(), "r", 4);
    }
  }

  private static double middle(int row) {
    return TOP + ROW * (row + 0.5);
  }
}
