package dev.flangewright.stock;

import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lists the batches of a build, in two statements. */
@Service
public class ListBatches {

  private final Batches batches;
  private final PiecesCut pieces;

  ListBatches(Batches batches, PiecesCut pieces) {
    this.batches = batches;
    this.pieces = pieces;
  }

  /** In the order in which they were recorded. */
  @Transactional(readOnly = true)
  public List<StockLine> of(long buildId) {
    Map<Long, Long> counts = pieces.counts(buildId);
    return batches.findByBuildIdOrderById(buildId).stream()
        .map(batch -> new StockLine(batch, counts.getOrDefault(batch.id(), 0L)))
        .toList();
  }
}
