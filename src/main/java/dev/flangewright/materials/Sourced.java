package dev.flangewright.materials;

/**
 * A value with where it stands.
 *
 * @param knownBy {@code read}: seen in a copy of the source; {@code memory}: recalled, check before
 *     relying on it; {@code computed}: from other values; {@code certificate}: entered by the build
 *     from its own; {@code own value}: a build's own shop value; {@code default}: a shop value as
 *     it comes with the program
 */
public record Sourced(double value, String source, String knownBy) {

  /** True for a value that must be shown with the mark "from memory". */
  public boolean fromMemory() {
    return knownBy.startsWith("memory");
  }

  /** How it is known, in words for a page. */
  public String knownInWords() {
    return fromMemory() ? "from memory: check before relying on it" : knownBy;
  }

  /** Source and how it is known, as they follow a figure in a sentence. */
  public String said() {
    return source + "; " + knownInWords();
  }
}
