package dev.flangewright.parts;

import dev.flangewright.forming.Cutout;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A cutout of a flange as it was written; mm along the mould line from the first station.
 *
 * @param depthMm from the free edge at the finished width; null for one through the bend, down to
 *     the bend line
 */
public record WrittenCutout(Written fromMm, Written toMm, @Nullable Written depthMm) {

  String line() {
    return String.join(",", fromMm.text(), toMm.text(), depthMm == null ? "" : depthMm.text());
  }

  static WrittenCutout ofLine(String line) {
    String[] cells = line.split(",", -1);
    Written depth = Optional.of(cells[2]).filter(c -> !c.isEmpty()).map(Written::new).orElse(null);
    return new WrittenCutout(new Written(cells[0]), new Written(cells[1]), depth);
  }

  /**
   * The cutout to calculate with: the depth counts from the finished width, also before trimming.
   */
  public Cutout cutout(FlangeDrawing drawn) {
    return new Cutout(
        fromMm.value(),
        toMm.value(),
        depthMm == null ? null : drawn.finishedWidthMm().value() - depthMm.value());
  }
}
