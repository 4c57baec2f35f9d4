package dev.flangewright.stock.web;

import dev.flangewright.stock.Batch;
import dev.flangewright.stock.ReadBatch;
import java.time.Clock;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.ModelMap;

/** Reads what the page of a batch shows. */
@Component
class BatchPages {

  private final ReadBatch read;
  private final Clock clock;

  BatchPages(ReadBatch read, Clock clock) {
    this.read = read;
    this.clock = clock;
  }

  @Transactional(readOnly = true)
  String fill(ModelMap model, long batchId) {
    Batch batch = read.of(batchId);
    model.addAttribute("build", batch.build());
    model.addAttribute("sheetLabel", "Batch " + batch.mark());
    model.addAttribute(
        "batch",
        BatchView.of(
            batch,
            read.pieces(batchId),
            read.isUnknownMetal(batch),
            read.certifiedValues(batch),
            clock.instant()));
    return "stock/batch";
  }
}
