package dev.flangewright.bench;

/** What sort of work a stage is. */
public enum StageKind {
  CUT("cut"),
  DRILL("drill"),
  PIERCE("pierce"),
  EDGE("edge"),
  FORM("form"),
  TRIM("trim"),
  SET("set"),
  INSPECT("inspect"),
  ACCEPT("accept");

  private final String word;

  StageKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** True for the stages that an inspection passes, never a log entry. */
  public boolean byInspection() {
    return this == INSPECT || this == ACCEPT;
  }
}
