package dev.flangewright.parts;

import java.util.regex.Pattern;

/**
 * A number as the drawing office wrote it: its text is kept, so that an export gives back what was
 * imported, "1.20" and not "1.2".
 *
 * @param text a plain decimal number, at most 30 characters
 */
public record Written(String text) {

  private static final Pattern PLAIN = Pattern.compile("-?\\d{1,12}(\\.\\d{1,12})?");

  /**
   * @throws NumberFormatException if the text is not a plain decimal number with a point
   */
  public Written {
    if (!PLAIN.matcher(text).matches()) {
      throw new NumberFormatException("\"" + text + "\" is not a plain decimal number");
    }
  }

  public double value() {
    return Double.parseDouble(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
