package dev.flangewright.parts.exchange;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How a file was written, apart from its values: kept with the build, so that an export gives back
 * the same bytes.
 *
 * @param byteOrderMark whether the file begins with one
 * @param lineEnd {@code \r\n}, {@code \n} or {@code \r}
 * @param endsItsLastLine whether the last row ends with a line end too
 * @param order the columns as they stand in the file, as places in {@link CsvFile#columns()}
 * @param quotedNames header cells in quotation marks: bit i is the i-th column of the file
 * @param quotedCells columns whose cells all stand in quotation marks, needed or not
 */
record FileStyle(
    boolean byteOrderMark,
    String lineEnd,
    boolean endsItsLastLine,
    List<Integer> order,
    int quotedNames,
    int quotedCells) {

  private static final List<String> LINE_ENDS = List.of("\r\n", "\n", "\r");
  private static final int HEX = 16;

  /** A column's place is one character: a digit, or a letter from ten on. */
  private static final int PLACES = Character.MAX_RADIX;

  /** RFC 4180, for a build whose register was never imported. */
  static FileStyle usual(CsvFile file) {
    List<Integer> order = file.usualColumns().stream().map(file.columns()::indexOf).toList();
    return new FileStyle(false, "\r\n", true, order, 0, 0);
  }

  /** As {@link #text} gave it; an empty text is the usual style. */
  static FileStyle of(String text, CsvFile file) {
    if (text.isEmpty()) {
      return usual(file);
    }
    String[] words = text.split(" ", -1);
    return new FileStyle(
        words[0].equals("bom"),
        LINE_ENDS.get(Integer.parseInt(words[1])),
        words[2].equals("end"),
        words[3].chars().map(c -> Character.digit(c, PLACES)).boxed().toList(),
        Integer.parseInt(words[4], HEX),
        Integer.parseInt(words[5], HEX));
  }

  /** At most 39 characters. */
  String text() {
    return String.join(
        " ",
        byteOrderMark ? "bom" : "no",
        Integer.toString(LINE_ENDS.indexOf(lineEnd)),
        endsItsLastLine ? "end" : "no",
        order.stream().map(FileStyle::letter).collect(Collectors.joining()),
        Integer.toHexString(quotedNames),
        Integer.toHexString(quotedCells));
  }

  private static String letter(int place) {
    return Character.toString(Character.forDigit(place, PLACES));
  }

  /** Whether the file has every column that it may have. */
  boolean isWhole(CsvFile file) {
    return order.size() == file.columns().size();
  }

  /** The same with every column, for a register that has come to need one the file did without. */
  FileStyle withAllColumns(CsvFile file) {
    List<Integer> missing =
        IntStream.range(0, file.columns().size()).boxed().filter(i -> !order.contains(i)).toList();
    List<Integer> all = Stream.of(order, missing).flatMap(List::stream).toList();
    return new FileStyle(byteOrderMark, lineEnd, endsItsLastLine, all, quotedNames, quotedCells);
  }
}
