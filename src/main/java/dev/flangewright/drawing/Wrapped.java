package dev.flangewright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Breaks lettering into lines, since SVG does not. */
final class Wrapped {

  private Wrapped() {}

  /** At most so many lines of at most so many letters; what is left out ends in an ellipsis. */
  static List<String> lines(String words, int letters, int most) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words.trim().split("\\s+")) {
      if (!line.isEmpty() && line.length() + 1 + word.length() > letters) {
        lines.add(cut(line.toString(), letters));
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(cut(line.toString(), letters));
    return lines.size() <= most ? lines : shortened(lines.subList(0, most), letters);
  }

  private static List<String> shortened(List<String> lines, int letters) {
    List<String> kept = new ArrayList<>(lines);
    String last = kept.remove(kept.size() - 1);
    kept.add(last.length() < letters ? last + "…" : last.substring(0, letters - 1) + "…");
    return kept;
  }

  private static String cut(String line, int letters) {
    return line.length() <= letters ? line : line.substring(0, letters - 1) + "…";
  }
}
