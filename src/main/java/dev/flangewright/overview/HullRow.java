package dev.flangewright.overview;

import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Spot;
import java.util.ArrayList;
import java.util.List;

/**
 * A row of frames set out along the hull, each seen at an angle from ahead: its breadth is drawn
 * shortened and sloping, its height true. Frames keep their order; the distance between them
 * follows their positions as far as they do not hide each other.
 *
 * @param hull around all frames, mm
 */
record HullRow(List<HullFrame> frames, Box hull) {

  /** Breadth as drawn over true breadth. */
  static final double SHORTENED = 0.34;

  /** Rise over true breadth. */
  static final double SLOPE = 0.1;

  /** Distance between two frames over the least at which they do not touch. */
  private static final double AIR = 1.08;

  /** Where each frame's middle would stand at a scale of 1, from the row's left end, mm. */
  List<Double> places() {
    List<Double> clear = new ArrayList<>();
    List<Double> apart = new ArrayList<>();
    for (int i = 1; i < frames.size(); i++) {
      clear.add(AIR * (right(i - 1) + left(i)));
      apart.add(frames.get(i).positionMm() - frames.get(i - 1).positionMm());
    }
    double trueLength = sum(apart);
    double stretch = trueLength > 0 ? sum(clear) / trueLength : 0;
    List<Double> places = new ArrayList<>(List.of(left(0)));
    for (int i = 0; i < clear.size(); i++) {
      places.add(places.get(i) + Math.max(clear.get(i), stretch * apart.get(i)));
    }
    return places;
  }

  /** Length of the row at a scale of 1, mm. */
  double lengthMm() {
    return places().get(frames.size() - 1) + right(frames.size() - 1);
  }

  /** How far a frame reaches to the left of its middle as drawn, mm. */
  private double left(int i) {
    return SHORTENED * (hull.centre().x() - frames.get(i).box().minX());
  }

  private double right(int i) {
    return SHORTENED * (frames.get(i).box().maxX() - hull.centre().x());
  }

  private static double sum(List<Double> lengths) {
    return lengths.stream().mapToDouble(d -> d).sum();
  }

  /** Height of the hull as drawn at a scale of 1, mm. */
  double heightMm() {
    return hull.height() + SLOPE * hull.width();
  }

  /** A point of a frame's plane as drawn at a scale of 1, from its frame's middle, y down. */
  Spot seen(Spot plan) {
    double x = plan.x() - hull.centre().x();
    return new Spot(SHORTENED * x, hull.centre().y() - plan.y() - SLOPE * x);
  }
}
