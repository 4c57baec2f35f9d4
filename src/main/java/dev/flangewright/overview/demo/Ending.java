package dev.flangewright.overview.demo;

/**
 * How one piece of the demo ended, or where it stands.
 *
 * @param stage the stage it is about; empty where it is about none
 * @param cause code of the scrap cause; empty unless scrapped
 * @param note what was found
 */
record Ending(Way way, String stage, String cause, String note) {

  /** What became of it. */
  enum Way {
    ACCEPTED,
    /** Accepted; one entry was made by mistake and taken back. */
    ACCEPTED_AFTER_SLIP,
    /** Sent back to a stage once, then accepted. */
    ACCEPTED_AFTER_REWORK,
    CONCESSION,
    SCRAPPED,
    /** Still in work: everything before the stage is done. */
    LEFT_BEFORE,
    /** Still in work: the stage has been started. */
    LEFT_AT
  }

  static Ending accepted() {
    return new Ending(Way.ACCEPTED, "", "", "");
  }

  static Ending acceptedAfterSlip(String stage, String reason) {
    return new Ending(Way.ACCEPTED_AFTER_SLIP, stage, "", reason);
  }

  static Ending acceptedAfterRework(String stage, String note) {
    return new Ending(Way.ACCEPTED_AFTER_REWORK, stage, "", note);
  }

  static Ending concession(String note) {
    return new Ending(Way.CONCESSION, "", "", note);
  }

  static Ending scrapped(String stage, String cause, String note) {
    return new Ending(Way.SCRAPPED, stage, cause, note);
  }

  static Ending leftBefore(String stage) {
    return new Ending(Way.LEFT_BEFORE, stage, "", "");
  }

  static Ending leftAt(String stage) {
    return new Ending(Way.LEFT_AT, stage, "", "");
  }
}
