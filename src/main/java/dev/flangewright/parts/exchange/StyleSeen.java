package dev.flangewright.parts.exchange;

import java.util.List;

/** Gathers, record by record, how a file is written, and where it leaves its own style. */
final class StyleSeen {

  private final boolean byteOrderMark;
  private List<Integer> order = List.of();
  private int quotedNames;
  private int alwaysQuoted = -1;
  private int onlyWhenNeeded = -1;
  private String lineEnd = "";
  private boolean lastLineEnds = true;
  private int oddLine;

  StyleSeen(boolean byteOrderMark) {
    this.byteOrderMark = byteOrderMark;
  }

  void header(WrittenRecord written, List<Integer> columns) {
    order = columns;
    quotedNames = written.quoted();
    end(written, 1);
  }

  void row(WrittenRecord written, List<String> cells, int line) {
    int needed = 0;
    for (int i = 0; i < cells.size(); i++) {
      needed |= WrittenRecord.needsMarks(cells.get(i)) ? 1 << i : 0;
    }
    alwaysQuoted &= written.quoted();
    onlyWhenNeeded &= ~(written.quoted() ^ needed);
    if ((~(alwaysQuoted | onlyWhenNeeded) & columns()) != 0) {
      isOddAt(line);
    }
    end(written, line);
  }

  private void end(WrittenRecord written, int line) {
    lastLineEnds = !written.lineEnd().isEmpty();
    if (lastLineEnds && lineEnd.isEmpty()) {
      lineEnd = written.lineEnd();
    }
    if (lastLineEnds && !lineEnd.equals(written.lineEnd())) {
      isOddAt(line);
    }
  }

  void isOddAt(int line) {
    oddLine = oddLine == 0 ? line : oddLine;
  }

  private int columns() {
    return (1 << order.size()) - 1;
  }

  /** The first line that cannot be given back as it stands; 0 if every line can. */
  int oddLine() {
    return oddLine;
  }

  FileStyle style() {
    int quoted = alwaysQuoted & ~onlyWhenNeeded & columns();
    String end = lineEnd.isEmpty() ? "\r\n" : lineEnd;
    return new FileStyle(byteOrderMark, end, lastLineEnds, order, quotedNames, quoted);
  }
}
