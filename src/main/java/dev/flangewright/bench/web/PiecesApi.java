package dev.flangewright.bench.web;

import dev.flangewright.bench.CorrectBatch;
import dev.flangewright.bench.LogOnce;
import dev.flangewright.bench.LogStage;
import dev.flangewright.receipts.Ask;
import dev.flangewright.receipts.EntryKey;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Pieces and their stages over HTTP. */
@RestController
@RequestMapping("/api/v1/pieces/{id}")
@Tag(name = "Pieces")
class PiecesApi {

  private final LogStage log;
  private final CorrectBatch batches;
  private final LogOnce once;
  private final ReadPiece read;

  PiecesApi(LogStage log, CorrectBatch batches, LogOnce once, ReadPiece read) {
    this.log = log;
    this.batches = batches;
    this.once = once;
    this.read = read;
  }

  @GetMapping
  @Operation(summary = "Read a piece with its stages and its log")
  PieceAnswer piece(@PathVariable long id) {
    return read.of(id);
  }

  @PostMapping("/stages/{code}/start")
  @Operation(
      summary = "Start a stage",
      description = "Every stage before it must be finished. Needs an account that logs work.")
  PieceAnswer start(
      @PathVariable long id,
      @PathVariable String code,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @RequestBody(required = false) @Nullable StageWork body) {
    StageWork said = StageWork.of(body);
    once.log(
        said.ask(key, "start " + code),
        id,
        () -> log.start(id, code, said.pieceVersion(), said.noteOrNone()));
    return read.of(id);
  }

  @PostMapping("/stages/{code}/check")
  @Operation(
      summary = "Record the check of a hold point",
      description = "Needs an account that releases holds: an inspector or the lead.")
  PieceAnswer check(
      @PathVariable long id,
      @PathVariable String code,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @RequestBody(required = false) @Nullable StageWork body) {
    StageWork said = StageWork.of(body);
    once.log(
        said.ask(key, "check " + code),
        id,
        () -> log.check(id, code, said.pieceVersion(), said.noteOrNone()));
    return read.of(id);
  }

  @PostMapping("/stages/{code}/finish")
  @Operation(
      summary = "Finish a stage",
      description =
          "A hold point is refused until its check is done, and a cut until its batch is named, if"
              + " the build records any of that metal. Needs an account that logs work.")
  PieceAnswer finish(
      @PathVariable long id,
      @PathVariable String code,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @RequestBody(required = false) @Nullable StageWork body) {
    StageWork said = StageWork.of(body);
    once.log(
        said.ask(key, "finish " + code),
        id,
        () -> log.finish(id, code, said.pieceVersion(), said.done()));
    return read.of(id);
  }

  @PostMapping("/batch")
  @Operation(
      summary = "Put down which batch the piece was cut from",
      description =
          "Later, or anew, with a reason; also a batch that is held back or used up by now. Needs"
              + " an account that inspects.")
  PieceAnswer setBatch(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @Valid @RequestBody PieceBatchRequest request) {
    once.log(
        new Ask(key, request.doneAt(), "batch " + request.batch() + ", " + request.reason()),
        id,
        () -> batches.of(id, request.batch(), request.pieceVersion(), request.reason()));
    return read.of(id);
  }

  @PostMapping("/undo")
  @Operation(
      summary = "Take the last entry back",
      description = "The log keeps both lines. Needs an account that logs work.")
  PieceAnswer undo(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @Valid @RequestBody UndoRequest request) {
    once.log(
        new Ask(key, request.doneAt(), "undo " + request.reason()),
        id,
        () -> log.undo(id, request.pieceVersion(), request.reason()));
    return read.of(id);
  }
}
