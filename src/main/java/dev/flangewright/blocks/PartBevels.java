package dev.flangewright.blocks;

import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.FormingPlan;
import dev.flangewright.parts.FigurePart;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartFigures;
import dev.flangewright.people.Refused;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the blocks of a part have to be cut to, flange by flange.
 *
 * @param problem why the part cannot be figured; null when it can
 */
public record PartBevels(Part part, List<OfFlange> flanges, @Nullable String problem) {

  /**
   * One flange.
   *
   * @param figures at the working width; block angle and tilt by FM-BLOCK
   * @param firstBlockAngleDeg where the first of two sets of form blocks is to bring the flange at
   *     its peak station, before springback, by FM-PLAN; null where one set serves
   * @param ground where the values behind springback come from; empty where they are not known
   */
  public record OfFlange(
      String flange, FlangeFigures figures, @Nullable Double firstBlockAngleDeg, String ground) {}

  /** Figures a part; one that cannot be figured has its reason instead. */
  static PartBevels of(Part part, FigurePart figure) {
    try {
      PartFigures figures = figure.of(part);
      List<OfFlange> flanges =
          figures.flanges().stream()
              .map(
                  one ->
                      new OfFlange(
                          one.flange().name(),
                          one.working(),
                          FormingPlan.of(one.working(), figures.sheet(), null, figures.practice())
                              .firstBlockAngleDeg(),
                          figures.springbackGround()))
              .toList();
      return new PartBevels(part, flanges, flanges.isEmpty() ? "no flange has a contour" : null);
    } catch (FormingException | Refused refusal) {
      return new PartBevels(part, List.of(), String.valueOf(refusal.getMessage()));
    }
  }
}
