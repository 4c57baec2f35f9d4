package dev.flangewright.bench;

import dev.flangewright.bench.NextJob.Kind;

/** Says in one sentence what a job is. */
final class JobSentence {

  private JobSentence() {}

  static String of(Candidate job, Kind kind) {
    String part = job.part().partNumber();
    if (kind == Kind.NOT_READY) {
      return part + " cannot be begun yet";
    }
    return job.inWork()
        .map(piece -> goOn(part, piece, kind))
        .orElseGet(() -> begin(part, job.attempts().nextNumber(), kind));
  }

  private static String begin(String part, int number, Kind kind) {
    return kind == Kind.WAIT
        ? "%s piece %d waits to be begun".formatted(part, number)
        : "Begin piece %d of %s".formatted(number, part);
  }

  private static String goOn(String part, PieceLine piece, Kind kind) {
    String which = "%s piece %d".formatted(part, piece.number());
    String stage = "“" + piece.stageName() + "”";
    return switch (kind) {
      case CHECK -> "Check " + stage + " on " + which;
      case INSPECT -> "Inspect " + which;
      case WAIT -> which + " waits at " + stage;
      default -> (piece.begun() ? "Finish " : "Start ") + stage + " on " + which;
    };
  }
}
