package dev.flangewright.heat;

import dev.flangewright.materials.FormingWindow;
import dev.flangewright.materials.FormingWindow.Storage;
import dev.flangewright.materials.Sourced;
import java.util.List;

/**
 * Forming windows as the shipped rows have them; {@link FormingWindowsTest} holds them against the
 * database.
 */
public final class Windows {

  private static final String TABLE = "MIL-H-6088G / AMS 2770 refrigeration table";

  private Windows() {}

  /**
   * Soft for 10 to 30 min: shop rule, common practice, from memory. Frozen within 15 min; keeps 1,
   * 30, 90 days at or below −12, −18, −23 °C: MIL-H-6088G / AMS 2770 refrigeration table, from
   * memory.
   */
  public static FormingWindow of2024() {
    return new FormingWindow("2024", shop(10), shop(30), table(15), storage(1, 30, 90), List.of());
  }

  /** No row for room temperature. Frozen within 30 min; keeps 7, 30, 90 days: the same table. */
  public static FormingWindow of7075() {
    return new FormingWindow("7075", null, null, table(30), storage(7, 30, 90), List.of());
  }

  /** An alloy that no row names. */
  public static FormingWindow ofNone() {
    return new FormingWindow("3003", null, null, null, List.of(), List.of());
  }

  private static List<Storage> storage(double... days) {
    return List.of(
        new Storage(-12, table(days[0])),
        new Storage(-18, table(days[1])),
        new Storage(-23, table(days[2])));
  }

  private static Sourced shop(double value) {
    return new Sourced(value, "shop rule", "memory");
  }

  private static Sourced table(double value) {
    return new Sourced(value, TABLE, "memory");
  }
}
