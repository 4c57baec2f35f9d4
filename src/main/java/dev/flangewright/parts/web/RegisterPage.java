package dev.flangewright.parts.web;

import dev.flangewright.parts.RegisterLine;
import java.util.List;

/**
 * One page of the register.
 *
 * @param number of this page, from 1
 * @param pages how many there are, at least 1
 * @param sought how many parts the filter takes, of {@code all} in the build
 */
record RegisterPage(List<RegisterRow> rows, int number, int pages, int sought, int all) {

  static final int LINES = 50;

  /** A page beyond the last is the last, one before the first is the first. */
  static RegisterPage of(List<RegisterLine> sought, int all, int asked) {
    int pages = Math.max(1, (sought.size() + LINES - 1) / LINES);
    int number = Math.min(pages, Math.max(1, asked));
    int from = (number - 1) * LINES;
    int to = Math.min(sought.size(), from + LINES);
    List<RegisterRow> rows = sought.subList(from, to).stream().map(RegisterRow::of).toList();
    return new RegisterPage(rows, number, pages, sought.size(), all);
  }

  public boolean hasBefore() {
    return number > 1;
  }

  public boolean hasAfter() {
    return number < pages;
  }

  /** How many parts are shown, in words. */
  public String count() {
    String parts = sought == 1 ? " part" : " parts";
    return sought == all ? all + parts : sought + " of " + all + " parts";
  }
}
