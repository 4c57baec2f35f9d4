package dev.flangewright.bench;

/** Whether a version of a route can still be changed. */
public enum RouteState {
  /** Being written; no piece goes by it. */
  DRAFT("draft"),
  /** Pieces begin on it; it never changes again. */
  RELEASED("released");

  private final String word;

  RouteState(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
