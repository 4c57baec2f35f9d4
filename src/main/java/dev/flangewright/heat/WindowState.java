package dev.flangewright.heat;

/** Where a piece stands in its forming window. */
public enum WindowState {
  /** Soft, and severe forming may go on. */
  OPEN("open"),
  /** Severe forming would best be finished by now, and has to be soon. */
  CLOSING("closing"),
  /** Too hard for severe forming, or kept frozen longer than the table allows. */
  PAST("past"),
  /** Frozen; nothing is formed until it is out. */
  IN_FREEZER("in the freezer"),
  /** The table has no figure for the alloy. */
  NOT_KNOWN("not known");

  private final String word;

  WindowState(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
