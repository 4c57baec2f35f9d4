package dev.flangewright.records;

import org.jspecify.annotations.Nullable;

/**
 * What looking through a chain has shown.
 *
 * @param count entries that fit, from the first on
 * @param head the hash of the last of them
 * @param broken the first place at which it does not fit; null if all fits
 * @param old what became of the old checkpoint; null if none was given, or the history is broken
 *     before it
 */
public record Verdict(
    String chain, long count, String head, @Nullable Broken broken, @Nullable Old old) {

  /**
   * @param seq the number that the entry has or should have
   * @param what is wrong, as it follows "Entry 12"
   */
  public record Broken(long seq, String what) {

    public String sentence() {
      return "Entry " + seq + " " + what + ".";
    }
  }

  /** What became of an old checkpoint. */
  public enum Old {
    CONTAINED("The history of that time is still contained, unchanged."),
    SHORTER("Entries are missing: there were more at the time of the checkpoint."),
    REWRITTEN("The history was rewritten: the entries up to the checkpoint are others than then."),
    OF_ANOTHER_CHAIN("The checkpoint belongs to another chain.");

    private final String sentence;

    Old(String sentence) {
      this.sentence = sentence;
    }

    public String sentence() {
      return sentence;
    }
  }

  /** Everything fits together, and the old checkpoint, if one was given, is contained. */
  public boolean isSound() {
    return broken == null && (old == null || old == Old.CONTAINED);
  }

  public String sentence() {
    return broken == null
        ? count + (count == 1 ? " entry fits" : " entries fit") + " together."
        : broken.sentence();
  }

  /** What is said of the old checkpoint; null if none was given. */
  public String oldSentence() {
    return old == null
        ? "The checkpoint could not be looked for: the history is broken before it."
        : old.sentence();
  }
}
