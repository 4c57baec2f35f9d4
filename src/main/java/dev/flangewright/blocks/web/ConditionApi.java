package dev.flangewright.blocks.web;

import dev.flangewright.blocks.HandleBlock;
import dev.flangewright.receipts.EntryKey;
import dev.flangewright.receipts.Once;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** What happens to blocks, over HTTP. */
@RestController
@RequestMapping("/api/v1/blocks/{id}/condition")
@Tag(name = "Block sets")
class ConditionApi {

  private final HandleBlock handle;
  private final Once once;
  private final ReadBlock read;

  ConditionApi(HandleBlock handle, Once once, ReadBlock read) {
    this.handle = handle;
    this.once = once;
    this.read = read;
  }

  @PostMapping
  @Operation(
      summary = "Say what happened to a block",
      description =
          "TAKE, PUT_BACK and REPORT_DAMAGE need an account that logs work; MAKE_READY, REPAIR and"
              + " SCRAP one that keeps the blocks: a lead or a fitter.")
  BlockAnswer change(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @Valid @RequestBody ConditionRequest request) {
    long block =
        once.of(
            request.ask(key),
            "block " + id,
            () ->
                handle.by(id, request.action(), request.blockVersion(), request.whyOrNone()).id());
    return read.of(block);
  }
}
