package dev.flangewright.bench;

import static org.springframework.test.util.ReflectionTestUtils.setField;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.parts.Build;
import dev.flangewright.parts.FlangeDrawing;
import dev.flangewright.parts.Frame;
import dev.flangewright.parts.Hand;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartDrawing;
import dev.flangewright.parts.Written;
import java.time.Instant;
import org.springframework.beans.BeanUtils;

/** Parts and pieces as tests of the bench need them, outside any database. */
final class APart {

  static final Instant NOON = Instant.parse("2026-06-02T12:00:00Z");

  private APart() {}

  static Part withFlanges(int flanges) {
    Build build = BeanUtils.instantiateClass(Build.class);
    setField(build, "id", 1L);
    Frame frame = new Frame(build, "F7", new Written("2100"));
    Part part =
        new Part(
            frame,
            "TW-F07-S3L",
            new PartDrawing(
                "S3", Hand.LEFT, "TW-0710", "C", "2024", "T3", "1.2", new Written("3"), "B7"));
    for (int i = 1; i <= flanges; i++) {
      FlangeDrawing drawn =
          new FlangeDrawing(FlangeKind.SHRINK, new Written("20"), new Written("24"));
      part.addFlange("flange " + i, drawn, i);
    }
    return part;
  }

  /** The usual route of parts with two flanges, released. */
  static Route route() {
    return RouteTemplates.route(PartNature.TWO_FLANGES, 1, "ann", NOON);
  }

  /** The same as a draft whose stages have the identities 1, 2, … in their order, as if stored. */
  static Route draft() {
    Route draft = route().draft("Two flanges", 2, by("ann"));
    draft.stages().forEach(stage -> setField(stage, "id", (long) stage.seq()));
    return draft;
  }

  /** Piece 1 of a part with two flanges on the usual route. */
  static Piece piece() {
    return new Piece(withFlanges(2), 1, route(), "ann", NOON);
  }

  /** The same, with every stage before the given one finished, an hour each. */
  static Piece pieceAt(String code) {
    Piece piece = piece();
    for (PieceStage stage : piece.stages()) {
      if (stage.code().equals(code)) {
        return piece;
      }
      pass(piece, stage);
    }
    throw new IllegalArgumentException("no stage " + code);
  }

  static void pass(Piece piece, PieceStage stage) {
    piece.start(stage.code(), by("ann"));
    if (stage.isHoldPoint()) {
      piece.check(stage.code(), by("ivo"));
    }
    piece.finish(stage.code(), 1.0, by("ann"));
  }

  static Signature by(String who) {
    return new Signature(who, NOON, "");
  }

  static Signature because(String reason) {
    return new Signature("ann", NOON, reason);
  }
}
