package dev.flangewright.bench;

import java.util.Map;

/** A panel that another module puts on the piece page, below the stages. */
public interface PiecePanel {

  /** The fragment to insert, as Thymeleaf names it: {@code "quality/_inspections :: ofPiece"}. */
  String template();

  /** What the fragment reads, under the names it reads it by: keep them apart by a prefix. */
  Map<String, Object> model(long pieceId);
}
