package dev.flangewright.records.backup;

/** Why a backup was made. Each sort is kept and counted apart from the others. */
public enum Occasion {
  NIGHTLY("nightly", "every night"),
  ASKED("asked", "asked for"),
  UPGRADE("upgrade", "before an upgrade");

  private final String inName;
  private final String words;

  Occasion(String inName, String words) {
    this.inName = inName;
    this.words = words;
  }

  String inName() {
    return inName;
  }

  public String words() {
    return words;
  }
}
