package dev.flangewright.bench;

import java.util.List;
import java.util.Optional;

/**
 * Why one job comes before another: each rule adds to a job's score and says so in plain words. The
 * order of the steps is common practice, no source: what stops others first, then what is furthest
 * on, then what was lost, then new parts. A step is worth more than everything below it together.
 */
final class RankingRules {

  private static final double STOPS_OTHERS = 6000;
  private static final double IN_WORK = 4000;
  private static final double LOST = 3000;
  private static final double NEW = 2000;
  private static final double WAITING = 1000;
  private static final double SUITS_THE_PERSON = 200;
  private static final double WHOLE_FRAME = 100;
  private static final double ALONG_THE_HULL = 0.001;

  /** One rule; empty where it has nothing to say. */
  interface Rule {
    Optional<Weight> weigh(Candidate candidate, Hands may);
  }

  static final List<Rule> ALL =
      List.of(
          RankingRules::aHoldWaitsForItsCheck,
          RankingRules::anInspectionIsDue,
          RankingRules::theNextStageIsOpen,
          RankingRules::theLastPieceWasScrapped,
          RankingRules::noPieceWasBegun,
          RankingRules::theRiskSuitsThePerson,
          RankingRules::theFrameIsNearlyComplete,
          RankingRules::theFrameStandsFurtherForward,
          RankingRules::thereAreNoFigures);

  private RankingRules() {}

  static Optional<Weight> aHoldWaitsForItsCheck(Candidate candidate, Hands may) {
    return candidate
        .inWork()
        .filter(PieceLine::held)
        .map(
            piece ->
                new Weight(
                    may.releaseHolds() ? STOPS_OTHERS + share(piece) : WAITING + share(piece),
                    "waits for " + checkOf(piece) + "; nobody can form it until then"));
  }

  private static String checkOf(PieceLine piece) {
    return piece.stageKind() == StageKind.EDGE
        ? "the edge check"
        : "the check of " + piece.stageInWords();
  }

  static Optional<Weight> anInspectionIsDue(Candidate candidate, Hands may) {
    return candidate
        .inWork()
        .filter(piece -> !piece.held() && piece.awaitsInspection())
        .map(
            piece ->
                new Weight(
                    may.inspect() ? STOPS_OTHERS : WAITING,
                    "every stage is finished; it waits for its inspection"));
  }

  static Optional<Weight> theNextStageIsOpen(Candidate candidate, Hands may) {
    return candidate
        .inWork()
        .filter(piece -> !piece.held() && !piece.awaitsInspection())
        .map(
            piece ->
                new Weight(
                    IN_WORK + share(piece),
                    "%d of %d stages done".formatted(piece.stagesDone(), piece.stagesTotal())));
  }

  /** Further along weighs more; a stage that lies begun on the bench half a stage more. */
  private static double share(PieceLine piece) {
    double done = piece.stagesDone() + (piece.begun() ? 0.5 : 0);
    return 500 * done / Math.max(1, piece.stagesTotal());
  }

  static Optional<Weight> theLastPieceWasScrapped(Candidate candidate, Hands may) {
    if (!candidate.isToBegin() || !candidate.attempts().isLost()) {
      return Optional.empty();
    }
    return candidate
        .attempts()
        .last()
        .map(lost -> new Weight(LOST, "piece " + lost.number() + " was scrapped"));
  }

  static Optional<Weight> noPieceWasBegun(Candidate candidate, Hands may) {
    boolean none = candidate.isToBegin() && candidate.attempts().pieces().isEmpty();
    return none ? Optional.of(new Weight(NEW, "not begun")) : Optional.empty();
  }

  /** The hard first ones go to the lead, the easy ones to whoever is learning. */
  static Optional<Weight> theRiskSuitsThePerson(Candidate candidate, Hands may) {
    if (!candidate.isToBegin()) {
      return Optional.empty();
    }
    if (candidate.isHighRisk() && candidate.firstOfKind() && may.lead()) {
      String why = "high risk by the figures (%s) and the first of its kind: for the lead";
      return Optional.of(new Weight(SUITS_THE_PERSON, why.formatted(candidate.riskInWords())));
    }
    if (candidate.isHighRisk() && may.learn()) {
      String why = "high risk by the figures (%s): ask the lead first";
      return Optional.of(new Weight(-SUITS_THE_PERSON, why.formatted(candidate.riskInWords())));
    }
    if (candidate.isLowRisk() && may.learn()) {
      return Optional.of(new Weight(SUITS_THE_PERSON, "low risk by the figures: good to learn on"));
    }
    return Optional.empty();
  }

  static Optional<Weight> theFrameIsNearlyComplete(Candidate candidate, Hands may) {
    FrameShare frame = candidate.frame();
    if (!candidate.isToBegin() || frame.passed() == 0) {
      return Optional.empty();
    }
    String reason =
        frame.left() == 1
            ? "only this one is left on " + frame.code()
            : "%d of %d on %s are accepted".formatted(frame.passed(), frame.parts(), frame.code());
    return Optional.of(new Weight(WHOLE_FRAME * frame.share(), reason));
  }

  static Optional<Weight> theFrameStandsFurtherForward(Candidate candidate, Hands may) {
    FrameShare frame = candidate.frame();
    double forward = 1 - (double) frame.place() / frame.frames();
    return Optional.of(new Weight(ALONG_THE_HULL * forward, ""));
  }

  static Optional<Weight> thereAreNoFigures(Candidate candidate, Hands may) {
    if (candidate.part().hasFigures() || candidate.inWork().isPresent()) {
      return Optional.empty();
    }
    String problem = candidate.part().problem();
    return Optional.of(
        new Weight(0, problem == null ? "no contour yet" : "no figures: " + problem));
  }
}
