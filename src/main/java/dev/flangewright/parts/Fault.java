package dev.flangewright.parts;

/**
 * One thing that is wrong with what was written, and where it stands.
 *
 * @param field the name of its column in the register or contour file: {@code thickness_mm}
 * @param value as it was written
 * @param reason completes "thickness_mm "abc": …" into a sentence
 */
public record Fault(String field, String value, String reason) {

  private static final int SHOWN = 60;

  public String sentence() {
    String shown = value.length() > SHOWN ? value.substring(0, SHOWN) + "…" : value;
    return shown.isEmpty()
        ? field + ": " + reason + "."
        : field + " \"" + shown + "\": " + reason + ".";
  }
}
