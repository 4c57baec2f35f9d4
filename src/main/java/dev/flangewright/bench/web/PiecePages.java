package dev.flangewright.bench.web;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PiecePanel;
import dev.flangewright.bench.Pieces;
import dev.flangewright.materials.KeepShopValues;
import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.materials.Metal;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartDrawing;
import dev.flangewright.people.Refused;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.ModelMap;

/** Reads everything that the page of a piece shows. */
@Component
class PiecePages {

  private final Pieces pieces;
  private final List<PiecePanel> panels;
  private final MaterialLibrary library;
  private final KeepShopValues shop;
  private final Clock clock;

  PiecePages(
      Pieces pieces,
      List<PiecePanel> panels,
      MaterialLibrary library,
      KeepShopValues shop,
      Clock clock) {
    this.pieces = pieces;
    this.panels = panels;
    this.library = library;
    this.shop = shop;
    this.clock = clock;
  }

  @Transactional(readOnly = true)
  void fill(ModelMap model, long pieceId) {
    Piece piece =
        pieces.findWithPartById(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    PiecePage page = PiecePage.of(piece, clock.instant(), ground(piece.part()));
    model.addAttribute("piece", page);
    model.addAttribute("build", piece.part().build());
    model.addAttribute("sheetLabel", piece.label());
    model.addAttribute("panels", panels.stream().map(PiecePanel::template).toList());
    panels.forEach(panel -> model.addAllAttributes(panel.model(pieceId)));
  }

  private SplitGround ground(Part part) {
    long buildId = part.build().id();
    PartDrawing drawn = part.drawn();
    Optional<Metal> metal =
        library
            .thickness(drawn.thickness())
            .map(read -> library.metal(buildId, drawn.alloy(), drawn.temper(), read.mm()));
    return SplitGround.of(metal, shop.of(buildId));
  }
}
