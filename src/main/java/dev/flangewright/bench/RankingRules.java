package dev.flangewright.bench;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Why one job comes before another. The rules stand in the order of their weight: of two jobs the
 * first rule that tells them apart decides, and what comes after it is not asked. The order is
 * common practice, no source: what is lost by waiting, then what stops others, then what is begun,
 * then what was lost, then new parts; among these what the jig needs, what saves a set-up and what
 * suits the person.
 */
final class RankingRules {

  private static final double STOPS_OTHERS = 3;
  private static final double IN_WORK = 2;
  private static final double LOST = 1;
  private static final double NEW = 0;

  /** One rule. */
  interface Rule {
    Weight weigh(Candidate job, Asking asked);
  }

  static final List<Rule> ALL =
      List.of(
          RankingRules::theFormingWindowCloses,
          RankingRules::theJobIsUnderWay,
          RankingRules::thePersonHasBegunIt,
          RankingRules::theJigNeedsTheFrame,
          RankingRules::theSetUpIsInTheVice,
          RankingRules::theFirstOfItsKindIsForTheLead,
          RankingRules::theRiskSuitsTheLearner,
          RankingRules::itIsFurtherOn,
          RankingRules::theFrameStandsFurtherForward,
          RankingRules::othersPassedOnIt);

  private RankingRules() {}

  /** A quenched piece hardens while it lies: the one that is too hard soonest comes first. */
  static Weight theFormingWindowCloses(Candidate job, Asking asked) {
    return job.inWork()
        .filter(piece -> job.wantsSoftMetal())
        .flatMap(piece -> Optional.ofNullable(asked.shop().windows().get(piece.id())))
        .map(RankingRules::closing)
        .orElse(Weight.LAST);
  }

  private static Weight closing(ClosingWindow window) {
    Instant closesAt = window.closesAt();
    return closesAt == null
        ? Weight.LAST
        : new Weight(-closesAt.getEpochSecond(), window.inWords());
  }

  static Weight theJobIsUnderWay(Candidate job, Asking asked) {
    return job.inWork().map(piece -> inWork(piece, asked.who())).orElseGet(() -> toBegin(job));
  }

  /** To those whom a gate keeps off, the gate has said already what it waits for. */
  private static Weight inWork(PieceLine piece, Hands who) {
    if (piece.held()) {
      String why = "waits for " + piece.checkInWords() + "; nobody can form it until then";
      return new Weight(STOPS_OTHERS, who.releaseHolds() ? why : "");
    }
    if (piece.awaitsInspection()) {
      String why = "every stage is finished; it waits for its inspection";
      return new Weight(STOPS_OTHERS, who.inspect() ? why : "");
    }
    return new Weight(
        IN_WORK, "%d of %d stages done".formatted(piece.stagesDone(), piece.stagesTotal()));
  }

  private static Weight toBegin(Candidate job) {
    if (job.hasNoFigures()) {
      String problem = job.part().problem();
      return new Weight(NEW, problem == null ? "no contour yet" : "no figures: " + problem);
    }
    return job.attempts()
        .last()
        .map(lost -> new Weight(LOST, "piece " + lost.number() + " was scrapped"))
        .orElse(new Weight(NEW, "not begun"));
  }

  static Weight thePersonHasBegunIt(Candidate job, Asking asked) {
    return job.isForming() && job.isBegunBy(asked.who().name())
        ? new Weight(1, "you have begun it")
        : Weight.NOTHING;
  }

  /** Frames with a number come in its order, all others after them. */
  static Weight theJigNeedsTheFrame(Candidate job, Asking asked) {
    Integer order = job.part().jigOrder();
    return order == null
        ? Weight.LAST
        : new Weight(-order, "%s is number %d in the jig".formatted(job.frame().code(), order));
  }

  static Weight theSetUpIsInTheVice(Candidate job, Asking asked) {
    return job.setUp()
        .filter(needed -> !job.isBegun())
        .map(needed -> weigh(job, needed, asked.setUps()))
        .orElse(Weight.NOTHING);
  }

  private static Weight weigh(Candidate job, SetUp needed, SetUps setUps) {
    if (setUps.isMine(needed)) {
      return new Weight(2, needed.blockSet() + " is set up already: you worked on it last");
    }
    return job.twin().filter(twin -> setUps.servedToday(twin.id(), needed)).isPresent()
        ? new Weight(1, needed.blockSet() + " was set up today for its other hand")
        : Weight.NOTHING;
  }

  static Weight theFirstOfItsKindIsForTheLead(Candidate job, Asking asked) {
    if (!job.isToBegin() || !job.firstOfKind() || !asked.who().lead() || job.isLowRisk()) {
      return Weight.NOTHING;
    }
    if (job.isHighRisk()) {
      String why = "high risk by the figures (%s) and the first of its kind: for the lead";
      return new Weight(2, why.formatted(job.riskInWords()));
    }
    return new Weight(1, "the first of its kind: for the lead");
  }

  /** The easy ones for whoever is learning; the hard ones after the others. */
  static Weight theRiskSuitsTheLearner(Candidate job, Asking asked) {
    if (!job.isToBegin() || !asked.who().learn()) {
      return Weight.NOTHING;
    }
    if (job.isHighRisk()) {
      String why = "high risk by the figures (%s): ask the lead first";
      return new Weight(-1, why.formatted(job.riskInWords()));
    }
    return job.isLowRisk()
        ? new Weight(1, "low risk by the figures: good to learn on")
        : Weight.NOTHING;
  }

  /** Of pieces the one with fewer stages to come, of parts the one whose frame is fuller. */
  static Weight itIsFurtherOn(Candidate job, Asking asked) {
    return job.inWork()
        .map(
            piece -> new Weight((double) piece.stagesDone() / Math.max(1, piece.stagesTotal()), ""))
        .orElseGet(() -> frameIsFuller(job.frame()));
  }

  private static Weight frameIsFuller(FrameShare frame) {
    if (frame.passed() == 0) {
      return Weight.NOTHING;
    }
    String reason =
        frame.left() == 1
            ? "only this one is left on " + frame.code()
            : "%d of %d on %s are accepted".formatted(frame.passed(), frame.parts(), frame.code());
    return new Weight(frame.share(), reason);
  }

  static Weight theFrameStandsFurtherForward(Candidate job, Asking asked) {
    return new Weight(-job.frame().place(), "");
  }

  /** Told, so that somebody else takes it up; it moves nothing on their lists. */
  static Weight othersPassedOnIt(Candidate job, Asking asked) {
    return new Weight(
        0,
        asked.passedOnByOthers(job).stream()
            .map(pass -> pass.who() + " passed on it: " + pass.reason())
            .collect(Collectors.joining("; ")));
  }
}
