package dev.flangewright.people;

/** One thing that a role may do. Reading is open to every account. */
public enum Permission {
  /** Make and change builds, frames, parts, flanges, contours and the route; import files. */
  EDIT_REGISTER("edit the register and import files"),
  /** Record block sets and their blocks; make ready, repair and scrap blocks. */
  KEEP_BLOCKS("keep the block sets"),
  /** Record material batches; hold them back and use them up. Whoever inspects releases them. */
  KEEP_STOCK("keep the metal in stock"),
  /**
   * Begin a piece; start and finish its stages; undo the last entry; take blocks and report damage.
   */
  LOG_WORK("log work on pieces"),
  /** Do the named check of a hold point. */
  RELEASE_HOLD("do the check of a hold point"),
  /** Scrap a piece. */
  SCRAP("scrap a piece"),
  /** Accept a piece, send it back for rework, or accept it with a concession. */
  INSPECT("accept a piece or send it back"),
  /** Read who changed what in a build, verify it and take it along. */
  READ_JOURNAL("read the journal"),
  /** Let a piece be formed although its forming window after the quench is past. */
  LET_FORM_LATE("let a piece be formed past its forming window"),
  /** Make, change and disable accounts. */
  MANAGE_PEOPLE("manage accounts");

  private final String words;

  Permission(String words) {
    this.words = words;
  }

  /** What it lets one do, as it follows "may". */
  public String words() {
    return words;
  }
}
