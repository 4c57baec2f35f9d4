package dev.flangewright.bench;

import org.jspecify.annotations.Nullable;

/**
 * A piece as lists read it: one row of one query, without its stages and log.
 *
 * @param stage the route card of its current stage; null once it is done
 * @param begunBy who has started that stage; null if nobody has
 * @param logLines how many lines its log has
 */
record PieceLine(
    long id,
    long partId,
    int number,
    PieceState state,
    int stagesDone,
    int stagesTotal,
    @Nullable StageCard stage,
    boolean begun,
    @Nullable String begunBy,
    boolean held,
    int logLines) {

  /** True where only an inspection can take it further. */
  boolean awaitsInspection() {
    return stage != null && stage.kind().byInspection();
  }

  /** The current stage as the route names it; empty if it has none. */
  String stageName() {
    return stage == null ? "" : stage.name();
  }

  /** What an inspector or the lead has to look at while it is held. */
  String checkInWords() {
    boolean edge = stage != null && stage.kind() == StageKind.EDGE;
    return edge ? "the edge check" : "the check of " + stageInWords();
  }

  /** The current stage within a sentence: its first letter small. */
  String stageInWords() {
    return InWords.within(stageName());
  }
}
