package dev.flangewright.drawing;

import org.jspecify.annotations.Nullable;

/** A hatch for each state, so that the parts of a bar are told apart without colour. */
final class Hatches {

  private final String id;

  /** Defines the hatches inside a drawing with this id. */
  static Hatches in(Svg svg, String id) {
    Hatches hatches = new Hatches(id);
    svg.open("defs");
    hatches.define(svg, SegmentState.IN_WORK, 7, 45, "M0 0V7");
    hatches.define(svg, SegmentState.HELD, 8, 0, "M4 0V8");
    hatches.define(svg, SegmentState.CONCESSION, 10, 0, "M1.5 5L4 8L8.5 1.5");
    hatches.define(svg, SegmentState.SCRAPPED, 10, 0, "M2 2L8 8M8 2L2 8");
    svg.close();
    return hatches;
  }

  private Hatches(String id) {
    this.id = id;
  }

  private void define(Svg svg, SegmentState state, double size, double turn, String strokes) {
    svg.open(
        "pattern",
        "id",
        name(state),
        "width",
        size,
        "height",
        size,
        "patternUnits",
        "userSpaceOnUse",
        "patternTransform",
        "rotate(" + Numbers.drawn(turn) + ")",
        "class",
        state.cssClass());
    svg.path("d-hatching", strokes);
    svg.close();
  }

  /** A part of a bar, with its outline. */
  void bar(Svg svg, SegmentState state, Box box) {
    rect(svg, "d-bar " + state.cssClass(), box, null);
    if (state != SegmentState.NOT_BEGUN && state != SegmentState.ACCEPTED) {
      rect(svg, "", box, "url(#" + name(state) + ")");
    }
  }

  private static void rect(Svg svg, String cssClass, Box box, @Nullable String fill) {
    svg.draw(
        "rect",
        fill == null ? "class" : "fill",
        fill == null ? cssClass : fill,
        "x",
        box.minX(),
        "y",
        box.minY(),
        "width",
        box.width(),
        "height",
        box.height());
  }

  private String name(SegmentState state) {
    return id + "-" + state.cssClass();
  }
}
