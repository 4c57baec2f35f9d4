package dev.flangewright.quality;

/** The disposition of an inspection. */
public enum Outcome {
  ACCEPT("accept"),
  REWORK("rework"),
  CONCESSION("concession"),
  SCRAP("scrap");

  private final String word;

  Outcome(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
