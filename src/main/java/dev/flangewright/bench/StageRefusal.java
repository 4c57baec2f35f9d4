package dev.flangewright.bench;

import dev.flangewright.people.Clearance;
import dev.flangewright.people.Refused;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the route forbids, with the facts; this is the one place that makes the sentence. */
public class StageRefusal extends Refused {

  private static final long serialVersionUID = 1L;

  /** Which rule stood in the way. */
  public enum Rule {
    PIECE_IS_DONE,
    NO_SUCH_STAGE,
    EARLIER_STAGE_OPEN,
    ALREADY_STARTED,
    NOT_STARTED,
    ALREADY_FINISHED,
    HOLD_NOT_CHECKED,
    NO_HOLD_POINT,
    ALREADY_CHECKED,
    NO_SUCH_CHECK,
    CHECKS_NOT_ANSWERED,
    CHECK_FAILED,
    NOTHING_TO_PASS,
    NOT_CLEARED,
    BARRED,
    NO_BATCH,
    UNFIT_BATCH,
    NEEDS_INSPECTION,
    NOTHING_TO_UNDO,
    NOTHING_TO_REWORK,
    SEEN_STALE
  }

  private static final Set<Rule> UNKNOWN = EnumSet.of(Rule.NO_SUCH_STAGE, Rule.NO_SUCH_CHECK);

  private final Rule rule;

  private StageRefusal(Rule rule, String sentence) {
    super(UNKNOWN.contains(rule) ? Kind.UNKNOWN : Kind.CONFLICT, sentence);
    this.rule = rule;
  }

  public Rule rule() {
    return rule;
  }

  static StageRefusal pieceIsDone(Piece piece) {
    return new StageRefusal(
        Rule.PIECE_IS_DONE,
        "%s is %s; nothing more is logged on it.".formatted(piece.label(), piece.state().word()));
  }

  static StageRefusal noSuchStage(Piece piece, String code) {
    return new StageRefusal(
        Rule.NO_SUCH_STAGE, "%s has no stage \"%s\".".formatted(piece.label(), code));
  }

  static StageRefusal earlierStageOpen(PieceStage wanted, PieceStage open) {
    return new StageRefusal(
        Rule.EARLIER_STAGE_OPEN,
        "\"%s\" comes after \"%s\", which is not finished.".formatted(wanted.name(), open.name()));
  }

  static StageRefusal alreadyStarted(PieceStage stage) {
    return new StageRefusal(
        Rule.ALREADY_STARTED,
        "\"%s\" was already started by %s.".formatted(stage.name(), stage.startedBy()));
  }

  static StageRefusal notStarted(PieceStage stage) {
    return new StageRefusal(
        Rule.NOT_STARTED, "\"%s\" has not been started. Start it first.".formatted(stage.name()));
  }

  static StageRefusal alreadyFinished(PieceStage stage) {
    return new StageRefusal(
        Rule.ALREADY_FINISHED,
        "\"%s\" was already finished by %s.".formatted(stage.name(), stage.finishedBy()));
  }

  static StageRefusal holdNotChecked(PieceStage stage) {
    return new StageRefusal(
        Rule.HOLD_NOT_CHECKED,
        "\"%s\" is a hold point. Missing: %s. An inspector or the lead can do this check."
            .formatted(stage.name(), stage.holdCheck()));
  }

  static StageRefusal noHoldPoint(PieceStage stage) {
    return new StageRefusal(
        Rule.NO_HOLD_POINT, "\"%s\" is no hold point; it has no check.".formatted(stage.name()));
  }

  static StageRefusal alreadyChecked(PieceStage stage) {
    return new StageRefusal(
        Rule.ALREADY_CHECKED,
        "\"%s\" was already checked by %s.".formatted(stage.name(), stage.checkedBy()));
  }

  static StageRefusal noSuchCheck(PieceStage stage, String code) {
    return new StageRefusal(
        Rule.NO_SUCH_CHECK, "\"%s\" has no check \"%s\".".formatted(stage.name(), code));
  }

  static StageRefusal checksNotAnswered(PieceStage stage, List<PieceCheck> open) {
    String missing =
        open.stream().map(check -> check.card().question()).collect(Collectors.joining("; "));
    return new StageRefusal(
        Rule.CHECKS_NOT_ANSWERED,
        "\"%s\" asks for more before it is finished. Missing: %s."
            .formatted(stage.name(), missing));
  }

  static StageRefusal checkFailed(PieceStage stage, PieceCheck check) {
    return new StageRefusal(
        Rule.CHECK_FAILED,
        "\"%s\" cannot be finished: %s. Put it right and answer again, or an inspector or the lead"
                .formatted(stage.name(), check.said())
            + " lets it pass with a note.");
  }

  static StageRefusal nothingToPass(PieceCheck check) {
    return new StageRefusal(
        Rule.NOTHING_TO_PASS,
        "\"%s\" does not stand in the way.".formatted(check.card().question()));
  }

  static StageRefusal notCleared(PieceStage stage, Clearance needed, List<String> cleared) {
    String who = cleared.isEmpty() ? "nobody is yet" : "these are: " + String.join(", ", cleared);
    return new StageRefusal(
        Rule.NOT_CLEARED,
        "\"%s\" needs somebody cleared to %s; %s. The lead clears people under People."
            .formatted(stage.name(), needed.words(), who));
  }

  static StageRefusal barred(PieceStage stage, StageBar bar) {
    return new StageRefusal(
        Rule.BARRED,
        "\"%s\" cannot start. %s Who can clear it: %s."
            .formatted(stage.name(), bar.missing(), bar.clearedBy()));
  }

  static StageRefusal noBatch(PieceStage stage, String missing) {
    return new StageRefusal(
        Rule.NO_BATCH, "\"%s\" cannot be finished. %s".formatted(stage.name(), missing));
  }

  static StageRefusal unfitBatch(String sentence) {
    return new StageRefusal(Rule.UNFIT_BATCH, sentence);
  }

  static StageRefusal needsInspection(PieceStage stage) {
    return new StageRefusal(
        Rule.NEEDS_INSPECTION,
        "\"%s\" is passed by an inspection. An inspector or the lead records it."
            .formatted(stage.name()));
  }

  static StageRefusal inspectionTooEarly(PieceStage open) {
    return new StageRefusal(
        Rule.EARLIER_STAGE_OPEN,
        "The piece cannot be passed yet: \"%s\" is not finished.".formatted(open.name()));
  }

  static StageRefusal nothingToUndo(@Nullable StageEntry last) {
    String sentence =
        last == null
            ? "Nothing has been logged that could be taken back."
            : "The last entry, \"%s\" %s, is an inspection's and is not taken back. Record a new"
                    .formatted(last.stageName(), last.action().word())
                + " inspection instead.";
    return new StageRefusal(Rule.NOTHING_TO_UNDO, sentence);
  }

  static StageRefusal nothingToRework(PieceStage stage) {
    return new StageRefusal(
        Rule.NOTHING_TO_REWORK,
        "\"%s\" has not been finished, so it cannot be sent back.".formatted(stage.name()));
  }

  static StageRefusal seenStale(Piece piece, List<StageEntry> meanwhile) {
    String what = meanwhile.stream().map(StageRefusal::told).collect(Collectors.joining(", then "));
    return new StageRefusal(
        Rule.SEEN_STALE,
        "%s has changed since you opened it%s. Your entry was not stored; look at the piece and log"
                .formatted(piece.label(), what.isEmpty() ? "" : ": " + what)
            + " it again if it is still right.");
  }

  private static String told(StageEntry entry) {
    String what = "%s %s \"%s\"".formatted(entry.who(), entry.action().word(), entry.stageName());
    return entry.undone() ? what + " (taken back)" : what;
  }
}
