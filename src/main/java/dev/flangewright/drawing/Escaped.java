package dev.flangewright.drawing;

/** Text as it may stand in XML and in HTML. */
final class Escaped {

  private Escaped() {}

  static String text(String words) {
    StringBuilder safe = new StringBuilder(words.length());
    words.codePoints().forEach(c -> append(safe, c));
    return safe.toString();
  }

  static String attribute(String words) {
    return text(words).replace("\"", "&quot;").replace("'", "&#39;");
  }

  private static void append(StringBuilder safe, int c) {
    switch (c) {
      case '&' -> safe.append("&amp;");
      case '<' -> safe.append("&lt;");
      case '>' -> safe.append("&gt;");
      default -> safe.appendCodePoint(allowed(c) ? c : '\uFFFD');
    }
  }

  /** The characters of XML 1.0 (W3C Recommendation, 5th ed., production 2). */
  private static boolean allowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || c >= 0x20 && c < 0xD800
        || c > 0xDFFF && c < 0xFFFE
        || c > 0xFFFF;
  }
}
