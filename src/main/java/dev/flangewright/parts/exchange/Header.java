package dev.flangewright.parts.exchange;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The columns of one file, which may stand in any order.
 *
 * @param order for each column of the file, its place in {@link CsvFile#columns()}
 */
record Header(CsvFile file, List<Integer> order) {

  /** Empty, with problems added, unless every column is there, once, and no other. */
  static Optional<Header> of(CsvFile file, List<String> names, Problems problems) {
    int before = problems.count();
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!file.columns().contains(name)) {
        problems.add(file, 1, name, name, unknown(file, name));
      } else if (!seen.add(name)) {
        problems.add(file, 1, name, name, "the column stands twice in the header");
      }
    }
    for (String column : file.columns()) {
      if (!seen.contains(column) && !file.mayLack(column)) {
        problems.add(file, 1, column, "", "the column is missing");
      }
    }
    return problems.count() > before
        ? Optional.empty()
        : Optional.of(new Header(file, names.stream().map(file.columns()::indexOf).toList()));
  }

  private static String unknown(CsvFile file, String name) {
    if (name.contains(";") || name.contains("\t")) {
      return "columns must be separated by commas";
    }
    if (file == CsvFile.REGISTER && CsvFile.CONTOURS.columns().contains(name)) {
      return "this is a column of contours.csv";
    }
    if (file == CsvFile.CONTOURS && CsvFile.REGISTER.columns().contains(name)) {
      return "this is a column of register.csv";
    }
    return "there is no such column; write names and units as in the description of the files";
  }

  String wrongCount(int cells) {
    return "the row has " + cells + " cells, the header has " + order.size();
  }

  /** The cells of a row in the order of {@link CsvFile#columns()}. */
  List<String> inOrder(List<String> cells) {
    String[] sorted = new String[file.columns().size()];
    java.util.Arrays.fill(sorted, "");
    for (int i = 0; i < sorted.length && i < cells.size(); i++) {
      sorted[order.get(i)] = cells.get(i);
    }
    return List.of(sorted);
  }
}
