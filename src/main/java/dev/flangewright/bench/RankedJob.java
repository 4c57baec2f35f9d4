package dev.flangewright.bench;

import dev.flangewright.bench.NextJob.Kind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A job with its score: what the rules add up to. */
record RankedJob(double score, NextJob job) {

  static RankedJob of(Candidate candidate, Hands may) {
    List<Weight> weights =
        RankingRules.ALL.stream()
            .map(rule -> rule.weigh(candidate, may))
            .flatMap(Optional::stream)
            .toList();
    List<String> reasons =
        weights.stream()
            .filter(weight -> !weight.reason().isEmpty())
            .sorted(Comparator.comparingDouble((Weight w) -> Math.abs(w.score())).reversed())
            .map(Weight::reason)
            .toList();
    double score = weights.stream().mapToDouble(Weight::score).sum();
    return new RankedJob(score, job(candidate, may, reasons));
  }

  private static NextJob job(Candidate candidate, Hands may, List<String> reasons) {
    return candidate
        .inWork()
        .map(piece -> goOn(candidate.part(), piece, may, reasons))
        .orElseGet(() -> begin(candidate, reasons));
  }

  private static NextJob goOn(PartLine part, PieceLine piece, Hands may, List<String> reasons) {
    Kind kind = kind(piece, may);
    String on = " on " + part.partNumber() + " piece " + piece.number();
    String sentence =
        switch (kind) {
          case CHECK -> "Check " + quoted(piece) + on;
          case INSPECT -> "Inspect " + part.partNumber() + " piece " + piece.number();
          case WAIT ->
              "%s piece %d waits at %s".formatted(part.partNumber(), piece.number(), quoted(piece));
          default -> (piece.begun() ? "Finish " : "Start ") + quoted(piece) + on;
        };
    String stage = piece.stageName() == null ? "" : piece.stageName();
    return new NextJob(
        part.id(), part.partNumber(), piece.id(), piece.number(), stage, sentence, reasons, kind);
  }

  private static String quoted(PieceLine piece) {
    return "“" + piece.stageName() + "”";
  }

  private static Kind kind(PieceLine piece, Hands may) {
    if (piece.held()) {
      return may.releaseHolds() ? Kind.CHECK : Kind.WAIT;
    }
    if (piece.awaitsInspection()) {
      return may.inspect() ? Kind.INSPECT : Kind.WAIT;
    }
    return Kind.CARRY_ON;
  }

  private static NextJob begin(Candidate candidate, List<String> reasons) {
    PartLine part = candidate.part();
    int number = candidate.attempts().nextNumber();
    boolean ready = part.hasFigures();
    String sentence =
        ready
            ? "Begin piece " + number + " of " + part.partNumber()
            : part.partNumber() + " cannot be begun yet";
    return new NextJob(
        part.id(),
        part.partNumber(),
        null,
        number,
        candidate.firstStage(),
        sentence,
        reasons,
        ready ? Kind.BEGIN : Kind.NOT_READY);
  }
}
