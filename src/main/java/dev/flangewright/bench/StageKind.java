package dev.flangewright.bench;

/** What sort of work a stage is. */
public enum StageKind {
  CUT("cut"),
  DRILL("drill"),
  PIERCE("pierce"),
  EDGE("edge"),
  FORM_SHRINK("form shrink"),
  FORM_STRETCH("form stretch"),
  TRIM("trim"),
  HEAT_TREAT("heat treat"),
  /** Bent straight, or trued to a template: the edge gets neither shorter nor longer. */
  SET("set"),
  INSPECT("inspect"),
  PROTECT("protect"),
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
