package dev.flangewright.bench;

import dev.flangewright.bench.NextJob.Kind;
import java.util.Comparator;
import java.util.List;

/**
 * A job with what decides its place.
 *
 * @param weights what each rule says of it, in the order of {@link RankingRules#ALL}
 */
record RankedJob(List<Weight> weights, NextJob job) {

  /**
   * What can be done, then what the person passed on, then what waits, then what cannot be begun;
   * within each the rules, and by part number where none of them tells two apart.
   */
  static final Comparator<RankedJob> ORDER =
      Comparator.comparing((RankedJob ranked) -> ranked.job().standing())
          .thenComparing(RankedJob::byTheRules)
          .thenComparing(ranked -> ranked.job().partNumber());

  static RankedJob of(Candidate candidate, Asking asked) {
    List<Weight> weights =
        RankingRules.ALL.stream().map(rule -> rule.weigh(candidate, asked)).toList();
    List<String> reasons =
        weights.stream().map(Weight::reason).filter(reason -> !reason.isEmpty()).toList();
    return new RankedJob(weights, job(candidate, asked, reasons));
  }

  private static int byTheRules(RankedJob one, RankedJob other) {
    for (int rule = 0; rule < one.weights.size(); rule++) {
      double mine = one.weights.get(rule).score();
      int decided = Double.compare(other.weights.get(rule).score(), mine);
      if (decided != 0) {
        return decided;
      }
    }
    return 0;
  }

  private static NextJob job(Candidate candidate, Asking asked, List<String> reasons) {
    List<StageBar> waitsFor =
        candidate.hasNoFigures() ? List.of() : JobGates.bars(candidate, asked);
    Kind kind = kind(candidate, !waitsFor.isEmpty());
    PieceLine piece = candidate.inWork().orElse(null);
    boolean pair = kind == Kind.BEGIN && candidate.twinToBegin();
    return new NextJob(
        candidate.part().id(),
        candidate.part().partNumber(),
        piece == null ? null : piece.id(),
        piece == null ? candidate.attempts().nextNumber() : piece.number(),
        candidate.stage().map(StageCard::name).orElse(""),
        JobSentence.of(candidate, kind),
        reasons,
        kind,
        waitsFor,
        pair ? candidate.twin().map(PartLine::partNumber).orElse(null) : null,
        asked.passedOnBecause(candidate).orElse(null));
  }

  private static Kind kind(Candidate candidate, boolean waits) {
    if (candidate.hasNoFigures()) {
      return Kind.NOT_READY;
    }
    return waits ? Kind.WAIT : candidate.inWork().map(RankedJob::kind).orElse(Kind.BEGIN);
  }

  private static Kind kind(PieceLine piece) {
    if (piece.held()) {
      return Kind.CHECK;
    }
    return piece.awaitsInspection() ? Kind.INSPECT : Kind.CARRY_ON;
  }
}
