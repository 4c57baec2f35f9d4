package dev.flangewright.bench;

/** Names put into sentences. */
public final class InWords {

  private InWords() {}

  /**
   * A name inside a sentence: its first letter small, unless the second is a capital too, as in an
   * abbreviation.
   */
  public static String within(String name) {
    boolean plain = name.length() < 2 || !Character.isUpperCase(name.charAt(1));
    return plain && !name.isEmpty()
        ? Character.toLowerCase(name.charAt(0)) + name.substring(1)
        : name;
  }
}
