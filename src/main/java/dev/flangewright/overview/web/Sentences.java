package dev.flangewright.overview.web;

import dev.flangewright.overview.StateCounts;
import java.util.ArrayList;
import java.util.List;

/** Counts put into a sentence. */
final class Sentences {

  private Sentences() {}

  /** Answers how far some segments have come. */
  static String howFar(StateCounts parts) {
    if (parts.done() == parts.total()) {
      return "All done: " + accepted(parts) + ".";
    }
    List<String> rest = new ArrayList<>();
    add(rest, parts.inWork(), "in work");
    add(rest, parts.held(), "held");
    add(rest, parts.notBegun(), "not begun");
    return accepted(parts) + "; " + listed(rest) + ".";
  }

  private static String accepted(StateCounts parts) {
    String all = parts.total() == 1 ? "1 segment" : parts.total() + " segments";
    String accepted = parts.done() + " of " + all + (parts.done() == 1 ? " is" : " are");
    return accepted + " accepted" + concessions(parts);
  }

  private static String concessions(StateCounts parts) {
    return parts.concession() == 0 ? "" : ", " + parts.concession() + " of them with a concession";
  }

  private static void add(List<String> list, int count, String words) {
    if (count > 0) {
      list.add(count + (count == 1 ? " is " : " are ") + words);
    }
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String listed(List<String> words) {
    if (words.size() < 2) {
      return String.join("", words);
    }
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}
