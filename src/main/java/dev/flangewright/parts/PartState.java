package dev.flangewright.parts;

/** How far a part has come, judged by its furthest piece. */
public enum PartState {
  NOT_BEGUN("not begun"),
  IN_WORK("in work"),
  HELD("held"),
  ACCEPTED("accepted"),
  CONCESSION("accepted with a concession");

  private final String word;

  PartState(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
