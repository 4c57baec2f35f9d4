package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * Tells how a piece was begun and what was logged on it. Inspections are left to the module that
 * records them: it knows what was found.
 */
@Component
@Order(10)
class LoggedEvents implements PieceEvents {

  private final Pieces pieces;

  LoggedEvents(Pieces pieces) {
    this.pieces = pieces;
  }

  @Override
  public List<PieceEvent> of(long pieceId) {
    Piece piece = pieces.findById(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    Stream<PieceEvent> logged =
        piece.log().stream()
            .filter(entry -> !entry.action().byInspection())
            .map(LoggedEvents::event);
    return Stream.concat(Stream.of(begun(piece)), logged).toList();
  }

  private static PieceEvent begun(Piece piece) {
    Route route = piece.route();
    Piece twin = piece.twin();
    String on = route == null ? "" : " on the route \"" + route.label() + "\"";
    String with = twin == null ? "" : " together with " + twin.label();
    return new PieceEvent(piece.createdAt(), piece.createdBy(), "began it" + on + with, "");
  }

  private static PieceEvent event(StageEntry entry) {
    Double hours = entry.hours();
    String what =
        "%s \"%s\"%s%s"
            .formatted(
                entry.action().word(),
                entry.stageName(),
                hours == null ? "" : ", " + Hours.inWords(hours),
                entry.said() == null ? "" : ": " + entry.said());
    return new PieceEvent(entry.doneAt(), entry.who(), what, entry.note(), entry.undone());
  }
}
