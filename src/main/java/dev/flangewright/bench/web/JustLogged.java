package dev.flangewright.bench.web;

import dev.flangewright.bench.Hours;
import dev.flangewright.bench.Moment;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.StageEntry;
import dev.flangewright.people.SignedIn;
import java.time.Instant;
import java.util.Optional;

/**
 * What the reader has just logged, offered for undoing.
 *
 * @param ordinal the line of the piece's log
 */
record JustLogged(int ordinal, String words) {

  static Optional<JustLogged> on(Piece piece, Instant now) {
    return piece
        .justLoggedBy(SignedIn.name(), now)
        .filter(entry -> entry.canBeTakenBackBy(SignedIn::may))
        .map(entry -> new JustLogged(entry.ordinal(), words(entry)));
  }

  private static String words(StageEntry entry) {
    Double hours = entry.hours();
    return "Logged: %s “%s”%s%s."
        .formatted(
            entry.action().word(),
            entry.stageName(),
            hours == null ? "" : ", " + Hours.inWords(hours),
            entry.said() == null ? "" : ": " + entry.said());
  }

  public long seconds() {
    return Moment.OFFERED.seconds();
  }
}
