package dev.flangewright.bench;

import org.jspecify.annotations.Nullable;

/** That somebody passed on a part's next job today, as lists read it; see {@link PassOn}. */
record PassOnLine(
    long partId, String who, int pieceNumber, @Nullable Integer logLines, String reason) {

  /** Whether nobody has begun the piece or logged on it since. */
  boolean stillMeans(Attempts attempts) {
    return attempts
        .inWork()
        .map(piece -> piece.number() == pieceNumber && isAt(piece.logLines()))
        .orElseGet(() -> logLines == null && attempts.nextNumber() == pieceNumber);
  }

  private boolean isAt(int linesNow) {
    return logLines != null && logLines == linesNow;
  }
}
