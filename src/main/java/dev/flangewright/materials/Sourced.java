package dev.flangewright.materials;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value with where it stands.
 *
 * @param knownBy {@code read}: seen in a copy of the source; {@code memory}: recalled, check before
 *     relying on it; {@code computed}: from other values; {@code certificate}: entered by the build
 *     from its own; {@code own value}: a build's own shop value; {@code default}: a shop value as
 *     it comes with the program
 */
public record Sourced(double value, String source, String knownBy) {

  private static final Pattern ADDRESS = Pattern.compile(" ?\\(https?://[^)]*\\)|https?://\\S+");
  private static final Pattern SITE = Pattern.compile("https?://([^/\\s]+)");

  /** True for a value that must be shown with the mark "from memory". */
  public boolean fromMemory() {
    return knownBy.startsWith("memory");
  }

  /** How it is known, in words for a page. */
  public String knownInWords() {
    return fromMemory() ? "from memory: check before relying on it" : knownBy;
  }

  /** Source without its addresses, and how it is known, as they follow a figure in a sentence. */
  public String said() {
    String named = ADDRESS.matcher(source).replaceAll("").strip();
    return named.startsWith(knownBy)
        ? named
        : (named.isEmpty() ? site() : named) + "; " + knownInWords();
  }

  /** The site of a source that is an address and nothing else. */
  private String site() {
    Matcher found = SITE.matcher(source);
    return found.find() ? found.group(1) : source;
  }
}
