package dev.flangewright.blocks;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a block set.
 *
 * @param hand null where nobody has said
 * @param pinMm diameter of the tool pins, mm; null where nobody has said
 * @param place the name of its place on the shelf; may be empty
 * @param note may be empty
 */
public record BlockSetFacts(
    @Nullable BlockHand hand, @Nullable Double pinMm, String place, String note) {

  /** The diameter without needless zeros, {@code "6"} or {@code "6.35"}; empty where unknown. */
  public String pinText() {
    return pinMm == null ? "" : BigDecimal.valueOf(pinMm).stripTrailingZeros().toPlainString();
  }
}
