package dev.flangewright.stock;

import java.util.List;
import java.util.Map;

/** Which pieces were cut from which batch. The module that keeps the pieces answers. */
public interface PiecesCut {

  /** How many pieces were cut from each batch of a build, by the batch's id, in one statement. */
  Map<Long, Long> counts(long buildId);

  /** Every piece cut from a batch, scrapped ones too, by part number and piece number. */
  List<CutPiece> of(long batchId);

  /**
   * A piece as the trace shows it.
   *
   * @param mark of its state, as pages draw it: {@code ACCEPTED}
   * @param state in words: {@code "in work: first flange"}
   */
  record CutPiece(long id, long partId, String partNumber, int number, String mark, String state) {

    /** {@code "TW-F07-S3L piece 1"}. */
    public String label() {
      return partNumber + " piece " + number;
    }
  }
}
