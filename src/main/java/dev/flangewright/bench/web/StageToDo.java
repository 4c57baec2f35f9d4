package dev.flangewright.bench.web;

import dev.flangewright.bench.InWords;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.StageBar;
import dev.flangewright.parts.Flange;
import java.util.List;

/**
 * The stage that the page of a piece offers.
 *
 * @param cleared whether the reader may work on it
 * @param clearance what for, in words; empty if anybody may
 * @param block whose damage can be told when it is finished, in words; empty if there is none
 * @param expected how long it should take, in words; empty if nobody knows
 */
record StageToDo(
    String code,
    String inWords,
    String holdCheck,
    String caution,
    List<String> figures,
    List<CheckLine> checks,
    boolean cleared,
    String clearance,
    String block,
    String expected,
    List<StageBar> bars) {

  static final StageToDo NONE =
      new StageToDo("", "", "", "", List.of(), List.of(), true, "", "", "", List.of());

  static StageToDo of(
      PieceStage stage,
      List<Flange> flanges,
      boolean cleared,
      SplitGround ground,
      String block,
      List<StageBar> bars) {
    String check = stage.holdCheck();
    Integer minutes = stage.card().expectedMinutes();
    var needed = stage.clearance();
    return new StageToDo(
        stage.code(),
        InWords.within(stage.name()),
        check == null ? "" : check,
        StageAdvice.caution(stage.kind()).orElse(""),
        StageAdvice.figures(stage.kind(), flanges, ground),
        stage.checks().stream().map(CheckLine::of).toList(),
        cleared,
        needed == null ? "" : needed.words(),
        block,
        minutes == null ? "" : minutes + " min",
        bars);
  }

  /** Nothing keeps the reader from starting it. */
  public boolean mayStart() {
    return cleared && bars.isEmpty();
  }

  /** Something is still to be answered in words or figures; a photo has a form of its own. */
  public boolean asks() {
    return checks.stream().anyMatch(check -> check.open() && !check.photo());
  }
}
