package dev.flangewright.bench;

import org.jspecify.annotations.Nullable;

/** A piece as lists read it: one row of one query, without its stages and log. */
record PieceLine(
    long id,
    long partId,
    int number,
    PieceState state,
    int stagesDone,
    int stagesTotal,
    @Nullable String stageName,
    @Nullable StageKind stageKind,
    boolean begun,
    boolean held) {

  /** True where only an inspection can take it further. */
  boolean awaitsInspection() {
    return stageKind != null && stageKind.byInspection();
  }

  /** The current stage within a sentence: its first letter small. */
  String stageInWords() {
    return stageName == null ? "" : InWords.within(stageName);
  }
}
