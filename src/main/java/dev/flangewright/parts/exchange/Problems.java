package dev.flangewright.parts.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Counts every problem and keeps the first of them, so that a hopeless file stays readable. */
final class Problems {

  static final int LISTED = 200;

  private final List<Problem> kept = new ArrayList<>();
  private int count;

  void add(CsvFile file, int line, String column, String value, String reason) {
    count++;
    if (kept.size() < LISTED) {
      kept.add(new Problem(file.fileName(), line, column, value, reason));
    }
  }

  int count() {
    return count;
  }

  /** The register's first, then by line. */
  List<Problem> inOrder() {
    return kept.stream()
        .sorted(
            Comparator.comparing((Problem p) -> p.file().equals(CsvFile.CONTOURS.fileName()))
                .thenComparingInt(Problem::line))
        .toList();
  }
}
