package dev.flangewright.drawing;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes one SVG drawing as a string that is safe inside an HTML page: text and attributes are
 * escaped, there is no inline style or script, and no coordinate that is not a number gets through.
 * Looks come from the style sheets, by class.
 */
public final class Svg {

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  private Svg() {}

  /**
   * A picture without links: read out as its title and description.
   *
   * @param id unique on the page
   * @param classes of the drawing, for its size of lettering
   */
  public static Svg picture(
      String id, String classes, Box paper, String title, String description) {
    return new Svg().begin(id, "img", classes, paper, title, description);
  }

  /** A drawing whose parts are links, each with its own title; parameters as a picture's. */
  public static Svg withLinks(
      String id, String classes, Box paper, String title, String description) {
    return new Svg().begin(id, "group", classes, paper, title, description);
  }

  private Svg begin(
      String id, String role, String classes, Box paper, String title, String description) {
    String view =
        Numbers.drawn(paper.minX())
            + ' '
            + Numbers.drawn(paper.minY())
            + ' '
            + Numbers.drawn(paper.width())
            + ' '
            + Numbers.drawn(paper.height());
    open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "id",
        id,
        "class",
        classes,
        "viewBox",
        view,
        "role",
        role,
        "aria-labelledby",
        id + "-title",
        "aria-describedby",
        id + "-desc");
    line("title", title, "id", id + "-title");
    return line("desc", description, "id", id + "-desc");
  }

  /**
   * Opens an element.
   *
   * @param attributes names and values in turn; numbers are written with two decimals at most
   */
  public Svg open(String element, Object... attributes) {
    start(element, attributes).append(">\n");
    open.push(element);
    return this;
  }

  /** Closes the element opened last. */
  public Svg close() {
    String element = open.pop();
    indent().append("</").append(element).append(">\n");
    return this;
  }

  /** An element without content. */
  public Svg draw(String element, Object... attributes) {
    start(element, attributes).append("/>\n");
    return this;
  }

  /** A path with a class. */
  public Svg path(String cssClass, String d) {
    return draw("path", "class", cssClass, "d", d);
  }

  /** An element with text alone. */
  public Svg line(String element, String words, Object... attributes) {
    start(element, attributes).append('>').append(Escaped.text(words));
    out.append("</").append(element).append(">\n");
    return this;
  }

  /** What the element just opened is; shown when pointed at, and read out. */
  public Svg title(String words) {
    return line("title", words);
  }

  /** Lettering at a spot, in ink. */
  public Svg label(Spot at, Anchor anchor, String words) {
    return words("d-label", at, anchor, words);
  }

  /** Lettering at a spot, in quiet ink. */
  public Svg quiet(Spot at, Anchor anchor, String words) {
    return words("d-label-quiet", at, anchor, words);
  }

  private Svg words(String cssClass, Spot at, Anchor anchor, String words) {
    return line(
        "text", words, "class", cssClass, "x", at.x(), "y", at.y(), "text-anchor", anchor.word());
  }

  /** The finished drawing; closes what is still open. */
  public String written() {
    while (!open.isEmpty()) {
      close();
    }
    return out.toString();
  }

  private StringBuilder start(String element, Object... attributes) {
    indent().append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      attribute((String) attributes[i], attributes[i + 1]);
    }
    return out;
  }

  private void attribute(String name, Object value) {
    if (name.equals("style") || name.startsWith("on")) {
      throw new IllegalArgumentException("A drawing carries no inline style or script: " + name);
    }
    String written =
        value instanceof Number number
            ? Numbers.drawn(number.doubleValue())
            : Escaped.attribute(value.toString());
    out.append(' ').append(name).append("=\"").append(written).append('"');
  }

  private StringBuilder indent() {
    return out.append("  ".repeat(open.size()));
  }
}
