package dev.flangewright.bench;

import dev.flangewright.forming.RiskLevel;
import dev.flangewright.forming.RiskMode;
import java.util.Optional;

/**
 * A part that is not done yet, with all that the ranking knows of it.
 *
 * @param firstOfKind no piece has been accepted yet of any part formed over the same block set
 * @param firstStage the stage a new piece would begin with
 */
record Candidate(
    PartLine part, Attempts attempts, FrameShare frame, boolean firstOfKind, String firstStage) {

  Optional<PieceLine> inWork() {
    return attempts.inWork();
  }

  boolean isToBegin() {
    return inWork().isEmpty() && part.hasFigures();
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
