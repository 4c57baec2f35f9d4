package dev.flangewright.bench;

/** How a check of a stage is answered. */
public enum CheckKind {
  YES_NO("yes or no"),
  NUMBER("a number"),
  PHOTO("a photo");

  private final String words;

  CheckKind(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** The kind of check that the answer is for. */
  static CheckKind of(Answer answer) {
    if (answer.photo() != null) {
      return PHOTO;
    }
    return answer.number() == null ? YES_NO : NUMBER;
  }
}
