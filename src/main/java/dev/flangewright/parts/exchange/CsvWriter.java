package dev.flangewright.parts.exchange;

import java.io.IOException;
import java.io.Writer;
import java.util.List;

/** Writes rows in a file's own style. */
final class CsvWriter {

  private final FileStyle style;
  private final Writer out;

  /** Writes the header at once. */
  CsvWriter(CsvFile file, FileStyle style, Writer out) throws IOException {
    this.style = style;
    this.out = out;
    if (style.byteOrderMark()) {
      out.write('\ufeff');
    }
    cells(file.columns(), style.quotedNames());
  }

  /** One row, its cells in the order of {@link CsvFile#columns()}. */
  void row(List<String> cells) throws IOException {
    out.write(style.lineEnd());
    cells(cells, style.quotedCells());
  }

  void end() throws IOException {
    if (style.endsItsLastLine()) {
      out.write(style.lineEnd());
    }
    out.flush();
  }

  private void cells(List<String> cells, int quoted) throws IOException {
    List<Integer> order = style.order();
    for (int i = 0; i < order.size(); i++) {
      String cell = cells.get(order.get(i));
      boolean marks = (quoted >> i & 1) == 1 || WrittenRecord.needsMarks(cell);
      out.write(i == 0 ? "" : ",");
      out.write(marks ? WrittenRecord.inMarks(cell) : cell);
    }
  }
}
