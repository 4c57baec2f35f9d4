package dev.flangewright.parts.exchange;

import java.util.List;

/**
 * One row of a file.
 *
 * @param line where the row begins, the header standing on line 1
 * @param cells in the order of {@link CsvFile#columns()}; a column that the file lacks is empty
 */
record CsvRow(CsvFile file, int line, List<String> cells) {

  String cell(String column) {
    return cells.get(file.columns().indexOf(column));
  }
}
