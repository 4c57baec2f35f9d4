package dev.flangewright.drawing;

import java.util.List;

/**
 * Lays a plan (mm, y up) on the paper (drawing units, y down) at one scale for both axes, so that
 * proportions are true.
 *
 * @param scale drawing units per mm
 * @param origin where the plan's origin comes to lie
 */
public record Fit(double scale, Spot origin) {

  /** Below this a plan has no size to speak of, mm. */
  private static final double SMALLEST_PLAN = 1;

  /** As large as it goes, in the middle of the paper. */
  public static Fit into(Box paper, Box plan) {
    double scale =
        Math.min(
            paper.width() / Math.max(plan.width(), SMALLEST_PLAN),
            paper.height() / Math.max(plan.height(), SMALLEST_PLAN));
    Spot middle = paper.centre();
    Spot planMiddle = plan.centre();
    return new Fit(
        scale, new Spot(middle.x() - scale * planMiddle.x(), middle.y() + scale * planMiddle.y()));
  }

  /** Where a point of the plan lies on the paper. */
  public Spot at(double xMm, double yMm) {
    return new Spot(origin.x() + scale * xMm, origin.y() - scale * yMm);
  }

  public Spot at(Spot plan) {
    return at(plan.x(), plan.y());
  }

  public List<Spot> all(List<Spot> plan) {
    return plan.stream().map(this::at).toList();
  }
}
