package dev.flangewright.bench.web;

import dev.flangewright.bench.InWords;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.StageEntry;
import java.util.Optional;

/** The sentence over a piece's page: where it stands, and with it what comes next. */
final class PieceHeading {

  private PieceHeading() {}

  static String of(Piece piece, Optional<PieceStage> current) {
    return current.map(PieceHeading::at).orElseGet(() -> ended(piece));
  }

  private static String at(PieceStage stage) {
    if (stage.kind().byInspection()) {
      return "Next: inspect it";
    }
    String name = InWords.within(stage.name());
    if (stage.isHeld()) {
      return "Held: " + name;
    }
    return (stage.isStarted() ? "Now: " : "Next: ") + name;
  }

  private static String ended(Piece piece) {
    return switch (piece.state()) {
      case SCRAPPED -> "Scrapped at " + lastStage(piece);
      case CONCESSION -> "Accepted with a concession";
      default -> "Accepted";
    };
  }

  private static String lastStage(Piece piece) {
    StageEntry last = piece.log().get(piece.log().size() - 1);
    return InWords.within(last.stageName());
  }
}
