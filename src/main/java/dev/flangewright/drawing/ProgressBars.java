package dev.flangewright.drawing;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A stacked bar a row, such as a stage or a frame: each state with its own hatch and its number.
 * All rows share one scale.
 */
public final class ProgressBars {

  /**
   * @param word what this part of the bar is called, such as "accepted"
   */
  public record Share(SegmentState state, int count, String word) {}

  /**
   * @param said the row's sum in words, such as "3 of 5 accepted"
   * @param shares in the order in which they are stacked
   */
  public record Row(String name, String said, List<Share> shares) {

    int total() {
      return shares.stream().mapToInt(Share::count).sum();
    }

    private String inWords() {
      return shares.stream()
          .filter(share -> share.count > 0)
          .map(share -> share.count + " " + share.word)
          .collect(Collectors.joining(", ", name + ": ", ""));
    }
  }

  private static final double WIDTH = 640;
  private static final double ROW = 72;
  private static final double BAR = 26;
  private static final double DIGIT = 13;
  private static final int LETTERS = 34;

  private ProgressBars() {}

  /**
   * @param id unique on the page
   * @return SVG for a page; empty when there is nothing to show
   */
  public static String of(String id, String title, List<Row> rows) {
    List<Row> filled = rows.stream().filter(row -> row.total() > 0).toList();
    if (filled.isEmpty()) {
      return "";
    }
    int most = filled.stream().mapToInt(Row::total).max().orElse(1);
    Scale scale = new Scale(0, most, 1, WIDTH - 1);
    String said = filled.stream().map(Row::inWords).collect(Collectors.joining("; ", "", "."));
    Box paper = Box.of(WIDTH, ROW * filled.size());
    Svg svg = Svg.picture(id, "drawing full column-wide", paper, title, said);
    Hatches hatches = Hatches.in(svg, id);
    for (int i = 0; i < filled.size(); i++) {
      row(svg, hatches, filled.get(i), scale, i * ROW);
    }
    return svg.written();
  }

  private static void row(Svg svg, Hatches hatches, Row row, Scale scale, double y) {
    svg.label(new Spot(0, y + 24), Anchor.START, Wrapped.lines(row.name, LETTERS, 1).get(0));
    svg.quiet(new Spot(WIDTH, y + 24), Anchor.END, row.said);
    int before = 0;
    for (Share share : row.shares) {
      if (share.count > 0) {
        Box box = new Box(scale.at(before), y + 34, scale.at(before + share.count), y + 34 + BAR);
        svg.open("g").title(row.name + ": " + share.count + " " + share.word);
        hatches.bar(svg, share.state, box);
        number(svg, share.count, box);
        svg.close();
        before += share.count;
      }
    }
  }

  /** The number on a patch of paper, where there is room for it. */
  private static void number(Svg svg, int count, Box box) {
    String figure = String.valueOf(count);
    double patch = DIGIT * figure.length() + 8;
    if (patch + 4 > box.width()) {
      return;
    }
    Spot middle = box.centre();
    svg.draw(
        "rect",
        "class",
        "d-ground",
        "x",
        middle.x() - patch / 2,
        "y",
        box.minY() + 1,
        "width",
        patch,
        "height",
        BAR - 2);
    svg.label(new Spot(middle.x(), middle.y() + 6), Anchor.MIDDLE, figure);
  }
}
