package dev.flangewright.stock.web;

import dev.flangewright.stock.BatchCondition;
import dev.flangewright.stock.StockLine;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The ledger of batches.
 *
 * @param answer to the question which metal may be cut
 * @param alloys those of all batches, to choose from
 * @param all how many batches the build records
 */
record StockPage(String answer, List<BatchRow> rows, List<String> alloys, int all) {

  /**
   * @param alloy shown alone; empty for all
   */
  static StockPage of(List<StockLine> lines, BatchFilter filter, String alloy) {
    return new StockPage(
        answer(lines),
        lines.stream()
            .filter(filter::takes)
            .filter(line -> alloy.isEmpty() || alloy.equalsIgnoreCase(alloyOf(line)))
            .map(BatchRow::of)
            .toList(),
        lines.stream().map(StockPage::alloyOf).distinct().sorted().toList(),
        lines.size());
  }

  private static String alloyOf(StockLine line) {
    return line.batch().facts().metal().alloy();
  }

  private static String answer(List<StockLine> lines) {
    if (lines.isEmpty()) {
      return "No batch is recorded. Pieces are cut without one, and nothing says where their metal"
          + " came from.";
    }
    String counts =
        Arrays.stream(BatchCondition.values())
            .map(condition -> count(lines, condition) + " " + condition.word())
            .filter(words -> !words.startsWith("0 "))
            .collect(Collectors.joining(", "));
    return "%d %s: %s.".formatted(lines.size(), lines.size() == 1 ? "batch" : "batches", counts);
  }

  private static long count(List<StockLine> lines, BatchCondition condition) {
    return lines.stream().filter(line -> line.batch().condition() == condition).count();
  }

  /** How many batches are shown, in words. */
  public String count() {
    String batches = all == 1 ? " batch" : " batches";
    return rows.size() == all ? all + batches : rows.size() + " of " + all + batches;
  }
}
