package dev.flangewright.bench;

/** What has become of a piece. */
public enum PieceState {
  IN_WORK("in work"),
  ACCEPTED("accepted"),
  CONCESSION("accepted with a concession"),
  SCRAPPED("scrapped");

  private final String word;

  PieceState(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
