package dev.flangewright.parts.exchange;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.springframework.core.io.Resource;

/**
 * Reads one file row by row (UTF-8, RFC 4180), hands each whole row on, and reports what is not
 * such a row. Nothing of the file is kept.
 */
final class CsvReader {

  private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
  private static final int ROWS_A_REPORT = 2_000;
  private static final String ODD_MARK =
      "a quotation mark may only enclose a whole cell; inside such a cell it is written twice";

  private final CsvFile file;
  private final Problems problems;
  private final Progress progress;

  CsvReader(CsvFile file, Problems problems, Progress progress) {
    this.file = file;
    this.problems = problems;
    this.progress = progress;
  }

  CsvRead read(Resource resource, Consumer<CsvRow> rows) {
    try (BufferedInputStream in = new BufferedInputStream(resource.getInputStream())) {
      StyleSeen seen = new StyleSeen(startsWithByteOrderMark(in));
      RecordedText text =
          new RecordedText(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()));
      boolean whole = read(text, seen, RegisterFiles.bytes(resource), rows, resource);
      return whole ? new CsvRead(seen.style(), seen.oddLine()) : CsvRead.NOTHING;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private boolean read(
      RecordedText text, StyleSeen seen, long bytes, Consumer<CsvRow> rows, Resource resource)
      throws IOException {
    try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
      Iterator<CSVRecord> records = parser.iterator();
      Optional<Header> header = header(records, text, seen);
      return header.isPresent() && rows(parser, records, header.get(), text, seen, bytes, rows);
    } catch (BrokenAt broken) {
      String reason = reason(broken, resource);
      problems.add(file, broken.line, "", "", reason);
      return false;
    }
  }

  private Optional<Header> header(Iterator<CSVRecord> records, RecordedText text, StyleSeen seen) {
    if (!hasNext(records, 1)) {
      problems.add(file, 1, "", "", "the file is empty; its first line names the columns");
      return Optional.empty();
    }
    List<String> names = records.next().toList();
    Optional<WrittenRecord> written = WrittenRecord.of(text.from(0), names);
    if (written.isEmpty()) {
      problems.add(file, 1, "", "", ODD_MARK);
      return Optional.empty();
    }
    Optional<Header> header = Header.of(file, names, problems);
    header.ifPresent(h -> seen.header(written.get(), h.order()));
    return header;
  }

  private boolean rows(
      CSVParser parser,
      Iterator<CSVRecord> records,
      Header header,
      RecordedText text,
      StyleSeen seen,
      long bytes,
      Consumer<CsvRow> rows) {
    int count = 0;
    int line = (int) parser.getCurrentLineNumber() + 1;
    while (hasNext(records, line)) {
      CSVRecord row = records.next();
      row(row, line, header, text, seen, rows);
      line = (int) parser.getCurrentLineNumber() + 1;
      if (++count > file.mostRows()) {
        problems.add(file, line, "", "", "at most " + file.mostRows() + " rows may stand in it");
        return false;
      }
      if (count % ROWS_A_REPORT == 0) {
        long done = Math.min(row.getCharacterPosition(), bytes);
        progress.at("Reading " + file.fileName(), done, bytes);
      }
    }
    return true;
  }

  private void row(
      CSVRecord row,
      int line,
      Header header,
      RecordedText text,
      StyleSeen seen,
      Consumer<CsvRow> rows) {
    List<String> cells = row.toList();
    Optional<WrittenRecord> written =
        WrittenRecord.of(text.from(row.getCharacterPosition()), cells);
    if (cells.size() == 1 && cells.get(0).isEmpty()) {
      seen.isOddAt(line);
    } else if (cells.size() != header.order().size()) {
      problems.add(file, line, "", "", header.wrongCount(cells.size()));
    } else if (written.isEmpty()) {
      problems.add(file, line, "", "", ODD_MARK);
    } else {
      seen.row(written.get(), cells, line);
      rows.accept(new CsvRow(file, line, header.inOrder(cells)));
    }
  }

  private static boolean hasNext(Iterator<CSVRecord> records, int line) {
    try {
      return records.hasNext();
    } catch (UncheckedIOException e) {
      throw new BrokenAt(line, Objects.requireNonNull(e.getCause()));
    }
  }

  private String reason(BrokenAt broken, Resource resource) throws IOException {
    if (broken.why instanceof CharacterCodingException) {
      broken.line = Utf8.firstBadLine(resource);
      return "the line is not UTF-8; save the file as UTF-8";
    }
    if (broken.why instanceof RecordedText.RecordTooLong) {
      return "the row does not end within "
          + RecordedText.LONGEST_RECORD
          + " characters; is a quotation mark left open";
    }
    if (broken.why instanceof CSVException) {
      return ODD_MARK;
    }
    throw broken.why;
  }

  private static boolean startsWithByteOrderMark(InputStream in) throws IOException {
    in.mark(BYTE_ORDER_MARK.length);
    if (java.util.Arrays.equals(in.readNBytes(BYTE_ORDER_MARK.length), BYTE_ORDER_MARK)) {
      return true;
    }
    in.reset();
    return false;
  }

  /** The structure of the file ends here. */
  private static final class BrokenAt extends RuntimeException {

    private static final long serialVersionUID = 1L;
    private int line;
    private final IOException why;

    BrokenAt(int line, IOException why) {
      super(why);
      this.line = line;
      this.why = why;
    }
  }
}
