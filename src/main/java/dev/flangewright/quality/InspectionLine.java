package dev.flangewright.quality;

import dev.flangewright.people.LogTime;
import dev.flangewright.photos.Gallery;
import java.time.Instant;

/**
 * An inspection in a list.
 *
 * @param mark the state it left the piece in
 * @param what outcome, stage and cause in words
 * @param photos taken at it
 */
public record InspectionLine(
    long pieceId,
    int pieceNumber,
    String mark,
    String what,
    String when,
    String who,
    String note,
    Gallery photos) {

  public static InspectionLine of(Inspection inspection, Gallery photos, Instant now) {
    return new InspectionLine(
        inspection.piece().id(),
        inspection.piece().number(),
        mark(inspection.outcome()),
        what(inspection),
        LogTime.of(inspection.doneAt(), now),
        inspection.who(),
        inspection.note(),
        photos);
  }

  /** The state's name that a piece is left in by an outcome. */
  static String mark(Outcome outcome) {
    return switch (outcome) {
      case ACCEPT -> "ACCEPTED";
      case CONCESSION -> "CONCESSION";
      case REWORK -> "IN_WORK";
      case SCRAP -> "SCRAPPED";
    };
  }

  static String what(Inspection inspection) {
    ScrapCause cause = inspection.cause();
    return switch (inspection.outcome()) {
      case ACCEPT -> "accepted";
      case CONCESSION -> "accepted with a concession";
      case REWORK -> "sent back to \"" + inspection.stageName() + "\" for rework";
      case SCRAP ->
          "scrapped at \"%s\"%s"
              .formatted(inspection.stageName(), cause == null ? "" : ": " + cause.name());
    };
  }
}
