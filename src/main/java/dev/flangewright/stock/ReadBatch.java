package dev.flangewright.stock;

import dev.flangewright.materials.KeepOwnMetals;
import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.materials.OwnMetal;
import dev.flangewright.people.Refused;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads one batch, every piece that was cut from it, and what the material library knows of it. */
@Service
public class ReadBatch {

  private final Batches batches;
  private final PiecesCut pieces;
  private final MaterialLibrary library;
  private final KeepOwnMetals metals;

  ReadBatch(Batches batches, PiecesCut pieces, MaterialLibrary library, KeepOwnMetals metals) {
    this.batches = batches;
    this.pieces = pieces;
    this.library = library;
    this.metals = metals;
  }

  /**
   * @throws Refused if there is no such batch
   */
  @Transactional(readOnly = true)
  public Batch of(long id) {
    return batches.findWholeById(id).orElseThrow(() -> Refused.unknown("batch", id));
  }

  /** Every piece cut from it, scrapped ones too. */
  @Transactional(readOnly = true)
  public List<PiecesCut.CutPiece> pieces(long batchId) {
    return pieces.of(batchId);
  }

  /** Whether neither a table nor a certificate of the build knows its metal. */
  @Transactional(readOnly = true)
  public boolean isUnknownMetal(Batch batch) {
    SheetMetal metal = batch.facts().metal();
    return library
        .metal(batch.build().id(), metal.alloy(), metal.temper(), metal.thicknessMm())
        .isUnknown();
  }

  /** The values that the build entered from the batch's certificate, if it did. */
  @Transactional(readOnly = true)
  public Optional<OwnMetal> certifiedValues(Batch batch) {
    String certificate = batch.facts().certificate();
    return metals.of(batch.build().id()).stream()
        .filter(metal -> !metal.isWithdrawn())
        .filter(metal -> metal.certificate().equalsIgnoreCase(certificate))
        .findFirst();
  }
}
