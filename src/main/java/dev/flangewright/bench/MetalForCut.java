package dev.flangewright.bench;

import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.materials.Thickness;
import dev.flangewright.parts.PartDrawing;
import dev.flangewright.people.Refused;
import dev.flangewright.stock.Batch;
import dev.flangewright.stock.BatchLine;
import dev.flangewright.stock.Batches;
import dev.flangewright.stock.SheetMetal;
import dev.flangewright.stock.SheetNeed;
import dev.flangewright.stock.SheetOnHand;
import dev.flangewright.stock.SheetsOfBuild;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Which batch a piece is cut from. What the build does not record stands in nobody's way. */
@Component
public class MetalForCut {

  private final SheetOnHand sheets;
  private final Batches batches;
  private final MaterialLibrary library;

  MetalForCut(SheetOnHand sheets, Batches batches, MaterialLibrary library) {
    this.sheets = sheets;
    this.batches = batches;
    this.library = library;
  }

  /** The metal that a piece is cut from; in another temper only if its route heat treats it. */
  public SheetNeed need(Piece piece) {
    PartDrawing drawn = piece.part().drawn();
    double thicknessMm = library.thickness(drawn.thickness()).map(Thickness::mm).orElse(0.0);
    return new SheetNeed(
        new SheetMetal(drawn.alloy(), drawn.temper(), thicknessMm),
        piece.stages().stream().anyMatch(stage -> stage.kind() == StageKind.HEAT_TREAT));
  }

  /** The batches that the piece may be cut from now; sheet of the very temper drawn first. */
  public List<BatchLine> offered(Piece piece) {
    return sheets.ofBuild(piece.buildId()).released(need(piece));
  }

  /** Every batch of its metal, in whatever condition. */
  public List<BatchLine> ofItsMetal(Piece piece) {
    return sheets.ofBuild(piece.buildId()).of(need(piece));
  }

  /** Why the piece cannot be cut now; empty if nothing is known to stand in the way. */
  Optional<String> lacking(Piece piece) {
    return sheets.ofBuild(piece.buildId()).lacking(need(piece));
  }

  /**
   * The batch that finishing a stage puts down.
   *
   * @param mark as it was said; empty if nothing was
   * @return empty if the stage cuts nothing, the batch is known already, or none is recorded
   * @throws Refused if a batch is to be named and was not, or this one may not be cut for the piece
   */
  Optional<Batch> chosen(Piece piece, PieceStage stage, String mark) {
    if (stage.kind() == StageKind.CUT && piece.batch() == null) {
      return mark.isBlank() ? none(piece, stage) : Optional.of(fit(piece, mark));
    }
    refuseAnother(piece, stage, mark);
    return Optional.empty();
  }

  private Optional<Batch> none(Piece piece, PieceStage stage) {
    SheetsOfBuild recorded = sheets.ofBuild(piece.buildId());
    SheetNeed need = need(piece);
    if (recorded.asksFor(need)) {
      throw StageRefusal.noBatch(stage, CutWords.missing(recorded, need));
    }
    return Optional.empty();
  }

  private Batch fit(Piece piece, String mark) {
    Batch batch = known(piece, mark);
    if (!batch.condition().mayBeCut()) {
      throw StageRefusal.unfitBatch(CutWords.notReleased(batch));
    }
    return batch;
  }

  /**
   * The batch of that mark, in whatever condition.
   *
   * @throws Refused if the build has none, or it is not of the metal that the piece is cut from
   */
  Batch known(Piece piece, String mark) {
    Batch batch =
        batches
            .findByBuildIdAndMark(piece.buildId(), mark.strip())
            .orElseThrow(
                () ->
                    StageRefusal.unfitBatch(
                        "This build has no batch \"%s\". Whoever keeps the stock records it."
                            .formatted(mark.strip())));
    SheetNeed need = need(piece);
    if (!need.isMetBy(batch.facts().metal())) {
      throw StageRefusal.unfitBatch(CutWords.otherMetal(batch, piece, need));
    }
    return batch;
  }

  private static void refuseAnother(Piece piece, PieceStage stage, String mark) {
    Batch cut = piece.batch();
    if (mark.isBlank() || (cut != null && cut.mark().equals(mark.strip()))) {
      return;
    }
    throw StageRefusal.unfitBatch(
        cut == null
            ? "\"%s\" cuts nothing from a sheet, so no batch is put down at it."
                .formatted(stage.name())
            : "%s was cut from batch %s. An inspector or the lead can put that right, with a reason."
                .formatted(piece.label(), cut.name()));
  }
}
