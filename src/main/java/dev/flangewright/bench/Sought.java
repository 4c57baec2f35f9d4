package dev.flangewright.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One way to read what was typed, or what a label says, to find a part or one of its pieces.
 *
 * @param partKey the part number without what people write differently: capitals, and neither
 *     blanks, hyphens, points nor strokes
 * @param piece the piece's number; 0 if none was named
 */
record Sought(String partKey, int piece) {

  /** A part number, then a blank or a stroke, and a piece number: {@code tw-f07-s3l piece 2}. */
  private static final Pattern WITH_PIECE =
      Pattern.compile("(.+?)(?:\\s+piece\\s*|[\\s/]+)(\\d{1,4})", Pattern.CASE_INSENSITIVE);

  /** Each way to read it: as a part number, and as one with a piece number behind it. */
  static List<Sought> readings(String typed) {
    Sought whole = new Sought(key(typed), 0);
    return withPiece(typed).map(one -> List.of(whole, one)).orElse(List.of(whole));
  }

  private static Optional<Sought> withPiece(String typed) {
    Matcher matcher = WITH_PIECE.matcher(typed.strip());
    return matcher.matches()
        ? Optional.of(new Sought(key(matcher.group(1)), Integer.parseInt(matcher.group(2))))
        : Optional.empty();
  }

  /** The same as the query of {@link FindLines} makes of a part number. */
  private static String key(String typed) {
    return typed.replaceAll("[\\s./-]", "").toUpperCase(Locale.ROOT);
  }
}
