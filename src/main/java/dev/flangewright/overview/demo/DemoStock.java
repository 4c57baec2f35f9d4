package dev.flangewright.overview.demo;

import dev.flangewright.bench.MetalForCut;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.Pieces;
import dev.flangewright.bench.StageKind;
import dev.flangewright.people.Role;
import dev.flangewright.people.ShopClock;
import dev.flangewright.people.SignedIn;
import dev.flangewright.stock.Batch;
import dev.flangewright.stock.BatchAction;
import dev.flangewright.stock.BatchEntry;
import dev.flangewright.stock.BatchLine;
import dev.flangewright.stock.Batches;
import dev.flangewright.stock.HandleBatch;
import dev.flangewright.stock.KeepBatches;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.stereotype.Component;

/**
 * The invented batches of the Tidewing: sheet for most of its frames. Two of one thickness, of
 * which one is held back in the end; one nobody has checked; for some frames none is recorded.
 */
@Component
class DemoStock {

  private static final String HELD_BACK = "B-3";
  private static final String UNCHECKED = "B-5";

  private final KeepBatches keep;
  private final HandleBatch handle;
  private final Batches batches;
  private final Pieces pieces;
  private final MetalForCut metal;
  private final ShopClock clock;

  DemoStock(
      KeepBatches keep,
      HandleBatch handle,
      Batches batches,
      Pieces pieces,
      MetalForCut metal,
      ShopClock clock) {
    this.keep = keep;
    this.handle = handle;
    this.batches = batches;
    this.pieces = pieces;
    this.metal = metal;
    this.clock = clock;
  }

  /** Puts the sheet on the rack, before the first piece was begun. */
  void deliver(long buildId, Instant then) {
    deliver(buildId, then, sheet("B-1", "2024", "O", "18 SWG", "61-118", "6", then));
    deliver(buildId, then, sheet("B-2", "2024", "O", "20 SWG", "61-119", "4", then));
    deliver(buildId, then, sheet(HELD_BACK, "2024", "O", "0.036 in", "61-207", "2", then));
    deliver(buildId, then, sheet("B-4", "6061", "T4", "0.036 in", "70-033", "5", then));
    deliver(buildId, then, sheet(UNCHECKED, "6061", "T4", "0.7", "70-041", "3", then));
  }

  private static BatchEntry sheet(
      String mark,
      String alloy,
      String temper,
      String thickness,
      String heat,
      String sheets,
      Instant then) {
    return new BatchEntry(
        mark,
        alloy,
        temper,
        thickness,
        heat,
        "Invented " + heat,
        "",
        "1000",
        "2000",
        sheets,
        LocalDate.ofInstant(then, ZoneOffset.UTC).toString(),
        "Sheet rack, slot " + mark.substring(2),
        "");
  }

  private void deliver(long buildId, Instant then, BatchEntry written) {
    as(Role.FITTER, then, () -> record(buildId, written));
    if (!written.mark().equals(UNCHECKED)) {
      as(
          Role.INSPECTOR,
          then,
          () ->
              happens(
                  buildId,
                  written.mark(),
                  BatchAction.RELEASE,
                  "Cast number on the sheet read against the certificate, thickness measured"));
    }
  }

  private void record(long buildId, BatchEntry written) {
    Batch unused = keep.record(buildId, written);
  }

  /** What has become of it by the time of the last entry. */
  void recall(long buildId, Instant then) {
    as(
        Role.INSPECTOR,
        then,
        () ->
            happens(
                buildId,
                HELD_BACK,
                BatchAction.HOLD_BACK,
                "Hardness of an offcut does not fit the temper on the certificate; asked again"));
  }

  private void happens(long buildId, String mark, BatchAction action, String words) {
    long id = batches.findByBuildIdAndMark(buildId, mark).orElseThrow().id();
    Batch unused = handle.by(id, action, null, words);
  }

  /** The batch that the invented people cut a piece from; empty where none is asked for. */
  String markFor(long pieceId, String stage) {
    Piece piece = pieces.findById(pieceId).orElseThrow();
    if (piece.stage(stage).kind() != StageKind.CUT || piece.batch() != null) {
      return "";
    }
    List<BatchLine> offered = metal.offered(piece);
    int which = Math.floorMod(piece.part().partNumber().hashCode(), Math.max(1, offered.size()));
    return offered.isEmpty() ? "" : offered.get(which).mark();
  }

  private void as(Role who, Instant then, Runnable work) {
    clock.at(then, () -> SignedIn.as(who.word(), who, work));
  }
}
