package dev.flangewright.parts.web;

import dev.flangewright.forming.Grain;
import dev.flangewright.forming.Point;
import java.util.List;

/** Says in a sentence which way the grain should run through a blank. */
final class GrainAdvice {

  private GrainAdvice() {}

  static String of(List<List<Point>> bendLines) {
    Grain grain = Grain.across(bendLines);
    String best = share(grain.bestShare());
    String worst = share(grain.worstShare());
    return best.equals(worst)
        ? "Grain: the bend lines run every way alike, so no direction is better than another."
        : ("Grain, where the drawing leaves it open: best at %d° from the frame's x axis towards y,"
                + " with %s of the bend line near to the grain, and worst at %d°, with %s.")
            .formatted(grain.bestDeg(), best, grain.worstDeg(), worst);
  }

  private static String share(double share) {
    return Figure.percent(share, 0).toString();
  }
}
