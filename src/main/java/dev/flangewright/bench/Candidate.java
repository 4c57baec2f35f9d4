package dev.flangewright.bench;

import dev.flangewright.forming.RiskLevel;
import dev.flangewright.forming.RiskMode;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A part that is not done yet, with all that the ranking knows of it.
 *
 * @param firstOfKind no piece has been accepted yet of any part formed over the same block set
 * @param firstStage the stage a new piece would begin with; empty if no route serves the part
 * @param twin the other hand, where there is one
 * @param twinToBegin a piece of the twin is to be begun too
 */
record Candidate(
    PartLine part,
    Attempts attempts,
    FrameShare frame,
    boolean firstOfKind,
    Optional<StageCard> firstStage,
    Optional<PartLine> twin,
    boolean twinToBegin) {

  /** Stages that bend or stretch the metal: what a forming window is for. */
  private static final Set<StageKind> FORMING =
      EnumSet.of(StageKind.FORM_SHRINK, StageKind.FORM_STRETCH, StageKind.SET);

  Optional<PieceLine> inWork() {
    return attempts.inWork();
  }

  boolean isToBegin() {
    return inWork().isEmpty() && part.hasFigures();
  }

  /** A piece of it can neither be worked on nor begun. */
  boolean hasNoFigures() {
    return inWork().isEmpty() && !part.hasFigures();
  }

  /** The stage to be done next. */
  Optional<StageCard> stage() {
    return inWork().isPresent() ? inWork().map(PieceLine::stage) : firstStage;
  }

  /** A stage of the route is next: no check of a hold point, and no inspection. */
  boolean isForming() {
    return inWork().map(piece -> !piece.held() && !piece.awaitsInspection()).orElse(true);
  }

  /** The next stage needs the piece soft, where it was quenched. */
  boolean wantsSoftMetal() {
    return isForming() && stage().filter(card -> FORMING.contains(card.kind())).isPresent();
  }

  /** Its next stage has been started. */
  boolean isBegun() {
    return inWork().filter(PieceLine::begun).isPresent();
  }

  boolean isBegunBy(String who) {
    return isBegun() && inWork().map(PieceLine::begunBy).filter(who::equals).isPresent();
  }

  Optional<SetUp> setUp() {
    return isForming()
        ? stage().flatMap(card -> SetUp.of(part.blockSet(), card))
        : Optional.empty();
  }

  boolean isHighRisk() {
    return RiskLevel.HIGH.name().equals(part.riskLevel())
        || RiskLevel.BEYOND.name().equals(part.riskLevel());
  }

  boolean isLowRisk() {
    return RiskLevel.LOW.name().equals(part.riskLevel());
  }

  /** How the part would be lost by the figures: {@code "split at the edge"}. */
  String riskInWords() {
    String mode = part.riskMode();
    return mode == null ? "mode not known" : RiskMode.valueOf(mode).label();
  }
}
