package dev.flangewright.bench.web;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PiecePanel;
import dev.flangewright.bench.Pieces;
import dev.flangewright.people.Refused;
import java.time.Clock;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.ModelMap;

/** Reads everything that the page of a piece shows. */
@Component
class PiecePages {

  private final Pieces pieces;
  private final List<PiecePanel> panels;
  private final Clock clock;

  PiecePages(Pieces pieces, List<PiecePanel> panels, Clock clock) {
    this.pieces = pieces;
    this.panels = panels;
    this.clock = clock;
  }

  @Transactional(readOnly = true)
  void fill(ModelMap model, long pieceId) {
    Piece piece =
        pieces.findWithPartById(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    PiecePage page = PiecePage.of(piece, clock.instant());
    model.addAttribute("piece", page);
    model.addAttribute("build", piece.part().build());
    model.addAttribute("sheetLabel", piece.label());
    model.addAttribute("panels", panels.stream().map(PiecePanel::template).toList());
    panels.forEach(panel -> model.addAllAttributes(panel.model(pieceId)));
  }
}
