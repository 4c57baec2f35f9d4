package dev.flangewright.materials;

/**
 * A value from a table, with where it stands.
 *
 * @param knownBy {@code read}: seen in a copy of the source; {@code memory}: recalled, check before
 *     relying on it; {@code derived}: computed
 */
public record Sourced(double value, String source, String knownBy) {

  /** True for a value that must be shown with the mark "from memory". */
  public boolean fromMemory() {
    return knownBy.startsWith("memory");
  }
}
