package dev.flangewright.bench;

import dev.flangewright.blocks.BlockKind;
import dev.flangewright.people.Clearance;
import java.util.List;
import java.util.Optional;

/**
 * What keeps a person from a job: each gate says what is missing and who can clear it. They see
 * what {@link StageGates} and {@link StageClearance} would refuse, for a whole build at once.
 */
final class JobGates {

  private static final String CHECKERS = "an inspector or the lead";

  /** One gate; empty where it stands open. */
  interface Gate {
    Optional<StageBar> bar(Candidate job, Asking asked);
  }

  static final List<Gate> ALL =
      List.of(
          JobGates::theHoldIsChecked,
          JobGates::thePieceIsInspected,
          JobGates::nobodyElseHasBegunIt,
          JobGates::theAccountLogsWork,
          JobGates::thePersonIsCleared,
          JobGates::theBlockIsReady,
          JobGates::theSheetIsThere,
          JobGates::theFormingWindowIsOpen);

  private JobGates() {}

  static List<StageBar> bars(Candidate job, Asking asked) {
    return ALL.stream().flatMap(gate -> gate.bar(job, asked).stream()).toList();
  }

  static Optional<StageBar> theHoldIsChecked(Candidate job, Asking asked) {
    return job.inWork()
        .filter(piece -> piece.held() && !asked.who().releaseHolds())
        .map(piece -> new StageBar("It waits for " + piece.checkInWords() + ".", CHECKERS));
  }

  static Optional<StageBar> thePieceIsInspected(Candidate job, Asking asked) {
    return job.inWork()
        .filter(piece -> !piece.held() && piece.awaitsInspection() && !asked.who().inspect())
        .map(
            piece ->
                new StageBar("Every stage is finished; it waits for its inspection.", CHECKERS));
  }

  static Optional<StageBar> nobodyElseHasBegunIt(Candidate job, Asking asked) {
    return job.inWork()
        .filter(piece -> job.isForming() && job.isBegun() && !job.isBegunBy(asked.who().name()))
        .flatMap(piece -> Optional.ofNullable(piece.begunBy()).map(by -> begunBy(by, piece)));
  }

  private static StageBar begunBy(String by, PieceLine piece) {
    return new StageBar("%s has begun “%s”.".formatted(by, piece.stageName()), by);
  }

  static Optional<StageBar> theAccountLogsWork(Candidate job, Asking asked) {
    return job.isForming() && !asked.who().log() && !asked.who().looksOn()
        ? Optional.of(
            new StageBar(
                "This account logs no work.", "whoever forms: a volunteer, a fitter or the lead"))
        : Optional.empty();
  }

  static Optional<StageBar> thePersonIsCleared(Candidate job, Asking asked) {
    if (asked.who().looksOn() || !job.isForming()) {
      return Optional.empty();
    }
    return job.stage()
        .flatMap(stage -> Optional.ofNullable(stage.clearance()))
        .filter(needed -> !asked.who().clearances().contains(needed))
        .map(needed -> notCleared(needed, asked.shop().cleared().getOrDefault(needed, List.of())));
  }

  private static StageBar notCleared(Clearance needed, List<String> names) {
    return new StageBar(
        "It needs somebody cleared to %s.".formatted(needed.words()),
        names.isEmpty()
            ? "nobody yet; the lead clears people"
            : String.join(", ", names) + "; the lead clears people");
  }

  static Optional<StageBar> theBlockIsReady(Candidate job, Asking asked) {
    return job.isBegun()
        ? Optional.empty()
        : job.setUp()
            .flatMap(
                needed ->
                    asked
                        .shop()
                        .blocks()
                        .notReady(
                            needed.blockSet(),
                            BlockKind.valueOf(needed.kind()),
                            needed.blockStage()))
            .map(missing -> new StageBar(missing, "whoever keeps the blocks"));
  }

  /** Sheet is asked for until the blank is cut. */
  static Optional<StageBar> theSheetIsThere(Candidate job, Asking asked) {
    boolean toCut = job.stage().filter(stage -> stage.kind() == StageKind.CUT).isPresent();
    return toCut && !job.isBegun()
        ? asked
            .shop()
            .sheetLacking()
            .apply(job.part())
            .map(missing -> new StageBar(missing, CutWords.RELEASED_BY))
        : Optional.empty();
  }

  static Optional<StageBar> theFormingWindowIsOpen(Candidate job, Asking asked) {
    return job.wantsSoftMetal() && !job.isBegun()
        ? job.inWork()
            .flatMap(piece -> Optional.ofNullable(asked.shop().windows().get(piece.id())))
            .flatMap(ClosingWindow::stageBar)
        : Optional.empty();
  }
}
