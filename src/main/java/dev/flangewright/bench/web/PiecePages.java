package dev.flangewright.bench.web;

import dev.flangewright.bench.BlockDamage;
import dev.flangewright.bench.BlockNeed;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PiecePanel;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.Pieces;
import dev.flangewright.bench.StageClearance;
import dev.flangewright.bench.StageGates;
import dev.flangewright.bench.TimeLine;
import dev.flangewright.bench.TwinOf;
import dev.flangewright.materials.KeepShopValues;
import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.materials.Metal;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartDrawing;
import dev.flangewright.people.Refused;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.ModelMap;

/** Reads everything that the page of a piece shows. */
@Component
class PiecePages {

  private final Pieces pieces;
  private final StageClearance clearance;
  private final StageGates gates;
  private final BlockDamage damage;
  private final TwinOf twins;
  private final TimeLine timeLine;
  private final List<PiecePanel> panels;
  private final MaterialLibrary library;
  private final KeepShopValues shop;
  private final Clock clock;

  PiecePages(
      Pieces pieces,
      StageClearance clearance,
      StageGates gates,
      BlockDamage damage,
      TwinOf twins,
      TimeLine timeLine,
      List<PiecePanel> panels,
      MaterialLibrary library,
      KeepShopValues shop,
      Clock clock) {
    this.pieces = pieces;
    this.clearance = clearance;
    this.gates = gates;
    this.damage = damage;
    this.twins = twins;
    this.timeLine = timeLine;
    this.panels = panels;
    this.library = library;
    this.shop = shop;
    this.clock = clock;
  }

  /**
   * @param wanted the code of the stage to be offered, of several that are open; may be empty
   */
  @Transactional(readOnly = true)
  void fill(ModelMap model, long pieceId, String wanted) {
    Piece piece =
        pieces.findWithPartById(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    Optional<PieceStage> shown = PiecePage.shown(piece, wanted);
    StageToDo stage = shown.map(one -> toDo(piece, one)).orElse(StageToDo.NONE);
    model.addAttribute("piece", PiecePage.of(piece, shown, stage, clock.instant()));
    model.addAttribute("twin", TwinLine.of(piece, twins.part(piece.part().id())).orElse(null));
    model.addAttribute("justLogged", JustLogged.on(piece, clock.instant()).orElse(null));
    model.addAttribute("timeLine", newestFirst(pieceId));
    model.addAttribute("build", piece.part().build());
    model.addAttribute("sheetLabel", piece.label());
    model.addAttribute("panels", panels.stream().map(PiecePanel::template).toList());
    panels.forEach(panel -> model.addAllAttributes(panel.model(pieceId)));
  }

  private StageToDo toDo(Piece piece, PieceStage stage) {
    return StageToDo.of(
        stage,
        piece.part().flanges(),
        clearance.holds(stage),
        ground(piece.part()),
        stage.isStarted() ? damage.reportable(piece, stage).map(BlockNeed::inWords).orElse("") : "",
        gates.bars(piece, stage, clock.instant()));
  }

  private List<LogLine> newestFirst(long pieceId) {
    Instant now = clock.instant();
    List<LogLine> lines = new ArrayList<>();
    timeLine.of(pieceId).forEach(event -> lines.add(LogLine.of(event, now)));
    Collections.reverse(lines);
    return lines;
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
