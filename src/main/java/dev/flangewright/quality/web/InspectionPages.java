package dev.flangewright.quality.web;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.Pieces;
import dev.flangewright.people.Refused;
import dev.flangewright.quality.KeepScrapCauses;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.ModelMap;

/** Reads what the inspection page shows. */
@Component
class InspectionPages {

  private final Pieces pieces;
  private final KeepScrapCauses causes;

  InspectionPages(Pieces pieces, KeepScrapCauses causes) {
    this.pieces = pieces;
    this.causes = causes;
  }

  @PreAuthorize("hasAnyAuthority('INSPECT', 'SCRAP')")
  @Transactional(readOnly = true)
  InspectionPage fill(ModelMap model, long pieceId) {
    Piece piece =
        pieces.findWithPartById(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    InspectionPage page = InspectionPage.of(piece, causes.offered());
    model.addAttribute("inspection", page);
    model.addAttribute("build", piece.part().build());
    return page;
  }
}
