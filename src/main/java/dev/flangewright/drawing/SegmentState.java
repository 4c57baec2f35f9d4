package dev.flangewright.drawing;

/** How far a segment has come, as its mark tells it. */
public enum SegmentState {
  NOT_BEGUN("Not begun", "s-not-begun"),
  IN_WORK("In work", "s-in-work"),
  HELD("Held", "s-held"),
  ACCEPTED("Accepted", "s-accepted"),
  CONCESSION("Concession", "s-concession"),
  SCRAPPED("Scrapped", "s-scrapped");

  private final String word;
  private final String cssClass;

  SegmentState(String word, String cssClass) {
    this.word = word;
    this.cssClass = cssClass;
  }

  /** The word that stands beside the mark. */
  public String word() {
    return word;
  }

  String cssClass() {
    return cssClass;
  }
}
