package dev.flangewright.parts;

import dev.flangewright.forming.GaugedRest;
import dev.flangewright.forming.StationFigures;
import org.jspecify.annotations.Nullable;

/**
 * A gauge reading with what it leaves to do.
 *
 * @param figures of the part that was gauged
 * @param flange the edge that was gauged
 * @param first the first station of the stretch that the reading speaks for
 * @param last the last one
 * @param webDepthMm that was reckoned with; null where the gauge needs none
 */
public record GaugeReading(
    PartFigures figures,
    PartFigures.OfFlange flange,
    GaugeKind gauge,
    StationFigures first,
    StationFigures last,
    @Nullable Double webDepthMm,
    GaugedRest left) {

  /** The answer in a sentence; a lower bound says so. */
  public String sentence() {
    if (left.passes() == 0) {
      return "By this reading nothing is left to do there.";
    }
    return "Still %s%.1f mm %s between stations %d and %d (%.2f %% of the edge), about %s."
        .formatted(
            left.rest().lowerBound() ? "at least " : "",
            left.rest().millimetres(),
            left.error().left(),
            first.number(),
            last.number(),
            left.rest().strain() * 100,
            left.passes() == 1 ? "1 pass" : left.passes() + " passes");
  }
}
