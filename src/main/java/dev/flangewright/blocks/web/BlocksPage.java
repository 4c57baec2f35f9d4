package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.blocks.BlockSetLine;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * One page of the list of block sets.
 *
 * @param answer to the question which are ready
 * @param number of this page, from 1
 * @param pages how many there are, at least 1
 * @param sought how many sets the filter takes, of {@code all} in the build
 */
record BlocksPage(
    String answer, List<BlockSetLine> rows, int number, int pages, int sought, int all) {

  static final int LINES = 50;

  /** A page beyond the last is the last, one before the first is the first. */
  static BlocksPage of(List<BlockSetLine> lines, SetFilter filter, int asked) {
    List<BlockSetLine> sought = lines.stream().filter(filter::takes).toList();
    int pages = Math.max(1, (sought.size() + LINES - 1) / LINES);
    int number = Math.min(pages, Math.max(1, asked));
    int from = (number - 1) * LINES;
    return new BlocksPage(
        answer(lines),
        sought.subList(from, Math.min(sought.size(), from + LINES)),
        number,
        pages,
        sought.size(),
        lines.size());
  }

  private static String answer(List<BlockSetLine> lines) {
    if (lines.isEmpty()) {
      return "No part names a block set yet, and none is recorded.";
    }
    List<String> rest = new ArrayList<>();
    add(rest, lines, line -> line.blocks().has(BlockCondition.TO_MAKE), "with a block to make");
    add(
        rest,
        lines,
        line -> line.blocks().has(BlockCondition.NEEDS_REPAIR),
        "with one that needs repair");
    add(rest, lines, line -> !line.isRecorded(), "not recorded yet");
    return "%d of %d sets %s ready%s."
        .formatted(
            count(lines, line -> line.blocks().isReady()),
            lines.size(),
            lines.size() == 1 ? "is" : "are",
            rest.isEmpty() ? "" : "; " + String.join(", ", rest));
  }

  private static void add(
      List<String> rest, List<BlockSetLine> lines, Predicate<BlockSetLine> which, String words) {
    long count = count(lines, which);
    if (count > 0) {
      rest.add(count + " " + words);
    }
  }

  private static long count(List<BlockSetLine> lines, Predicate<BlockSetLine> which) {
    return lines.stream().filter(which).count();
  }

  public boolean hasBefore() {
    return number > 1;
  }

  public boolean hasAfter() {
    return number < pages;
  }

  /** How many sets are shown, in words. */
  public String count() {
    String sets = sought == 1 ? " set" : " sets";
    return sought == all ? all + sets : sought + " of " + all + " sets";
  }
}
