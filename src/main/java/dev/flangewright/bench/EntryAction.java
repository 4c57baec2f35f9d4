package dev.flangewright.bench;

/** What a line of a piece's log says. */
public enum EntryAction {
  START("started"),
  CHECK("checked"),
  FINISH("finished"),
  UNDO("took back"),
  ACCEPT("accepted"),
  CONCEDE("accepted with a concession"),
  REWORK("sent back for rework"),
  SCRAP("scrapped");

  private final String word;

  EntryAction(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** An inspection's entries stay: a new inspection follows instead. */
  boolean canBeUndone() {
    return this == START || this == CHECK || this == FINISH;
  }
}
