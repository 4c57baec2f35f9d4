package dev.flangewright.overview;

import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Spot;
import java.util.ArrayList;
import java.util.List;

/**
 * A row of frames set out along the hull, each seen at an angle from ahead: its breadth is drawn
 * shortened and sloping, its height true. The distance between frames keeps the order and, as far
 * as the frames do not hide each other, the proportion of their positions.
 *
 * @param left where the first frame's middle comes to lie
 * @param right where the last one's does
 * @param middleY where the middle of the hull's height comes to lie
 * @param scale drawing units per mm
 */
record HullRow(
    List<HullFrame> frames, Box hull, double left, double right, double middleY, double scale) {

  /** Breadth as drawn over true breadth. */
  static final double SHORTENED = 0.4;

  /** Rise over true breadth. */
  static final double SLOPE = 0.1;

  /** Share of the mean distance that no two frames stand closer than. */
  private static final double CLOSEST = 0.75;

  /** Where each frame's middle stands across the paper, in the order of the frames. */
  List<Double> places() {
    List<Double> steps = new ArrayList<>();
    double length = frames.get(frames.size() - 1).positionMm() - frames.get(0).positionMm();
    double mean = length / Math.max(1, frames.size() - 1);
    for (int i = 1; i < frames.size(); i++) {
      double step = frames.get(i).positionMm() - frames.get(i - 1).positionMm();
      steps.add(mean == 0 ? 1 : Math.max(step / mean, CLOSEST));
    }
    return spread(steps);
  }

  private List<Double> spread(List<Double> steps) {
    double sum = steps.stream().mapToDouble(d -> d).sum();
    List<Double> places = new ArrayList<>();
    double place = steps.isEmpty() ? (left + right) / 2 : left;
    places.add(place);
    for (double step : steps) {
      place += step / sum * (right - left);
      places.add(place);
    }
    return places;
  }

  /** Where a point of a frame's plane lies on the paper, its frame standing at a place. */
  Spot at(double place, Spot plan) {
    double x = scale * (plan.x() - hull.centre().x());
    double y = scale * (plan.y() - hull.centre().y());
    return new Spot(place + SHORTENED * x, middleY - y - SLOPE * x);
  }

  List<Spot> all(double place, List<Spot> plan) {
    return plan.stream().map(spot -> at(place, spot)).toList();
  }

  /** Height of a hull drawn at a scale. */
  static double height(Box hull, double scale) {
    return scale * (hull.height() + SLOPE * hull.width());
  }
}
