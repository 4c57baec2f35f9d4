package dev.flangewright.stock;

/** How it stands with a batch. */
public enum BatchCondition {
  /** Delivered; nobody has checked the certificate against the sheet yet. */
  RECEIVED("received", "is received and its certificate is not checked yet"),
  RELEASED("released", "is released"),
  HELD_BACK("held back", "is held back"),
  USED_UP("used up", "is used up");

  private final String word;
  private final String sentence;

  BatchCondition(String word, String sentence) {
    this.word = word;
    this.sentence = sentence;
  }

  public String word() {
    return word;
  }

  /** As it follows the mark: {@code "is held back"}. */
  public String sentence() {
    return sentence;
  }

  /** Whether metal may be cut from it. */
  public boolean mayBeCut() {
    return this == RELEASED;
  }
}
