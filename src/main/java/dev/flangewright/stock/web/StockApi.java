package dev.flangewright.stock.web;

import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import dev.flangewright.stock.Batch;
import dev.flangewright.stock.Batches;
import dev.flangewright.stock.HandleBatch;
import dev.flangewright.stock.ListBatches;
import dev.flangewright.stock.ReadBatch;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Material batches over HTTP. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Material batches")
@Transactional(readOnly = true)
class StockApi {

  private final Builds builds;
  private final ListBatches list;
  private final ReadBatch read;
  private final HandleBatch handle;
  private final Batches batches;

  StockApi(Builds builds, ListBatches list, ReadBatch read, HandleBatch handle, Batches batches) {
    this.builds = builds;
    this.list = list;
    this.read = read;
    this.handle = handle;
    this.batches = batches;
  }

  @GetMapping("/builds/{id}/batches")
  @Operation(
      summary = "List a build's material batches",
      description = "In the order in which they were recorded.")
  List<BatchLineAnswer> batches(@PathVariable long id) {
    if (!builds.existsById(id)) {
      throw Refused.unknown("build", id);
    }
    return list.of(id).stream().map(BatchLineAnswer::of).toList();
  }

  @GetMapping("/batches/{id}")
  @Operation(
      summary = "Read a material batch",
      description = "With its log, and every piece that was cut from it.")
  BatchAnswer batch(@PathVariable long id) {
    return BatchAnswer.of(read.of(id), read.pieces(id));
  }

  @PostMapping("/batches/{id}/condition")
  @Operation(
      summary = "Say what happened to a material batch",
      description =
          "RELEASE and TAKE_BACK need an inspector or the lead, and the number of the certificate;"
              + " USE_UP an account that keeps the stock: a lead or a fitter; HOLD_BACK either.")
  @Transactional
  BatchAnswer change(@PathVariable long id, @Valid @RequestBody BatchRequest request) {
    String words = request.words() == null ? "" : request.words();
    Batch batch = handle.by(id, request.action(), request.batchVersion(), words);
    batches.flush(); // so that the version in the answer is the new one
    return BatchAnswer.of(batch, read.pieces(id));
  }
}
