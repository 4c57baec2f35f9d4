package dev.flangewright.bench.web;

import dev.flangewright.bench.Answer;
import dev.flangewright.bench.LogOnce;
import dev.flangewright.bench.LogStage;
import dev.flangewright.receipts.EntryKey;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The checks of a piece's stages over HTTP. */
@RestController
@RequestMapping("/api/v1/pieces/{id}/stages/{code}/checks/{check}")
@Tag(name = "Pieces")
class ChecksApi {

  private final LogStage log;
  private final LogOnce once;
  private final ReadPiece read;

  ChecksApi(LogStage log, LogOnce once, ReadPiece read) {
    this.log = log;
    this.once = once;
    this.read = read;
  }

  @PostMapping
  @Operation(
      summary = "Answer a check",
      description =
          "The stage must be begun. An answer given before is replaced; the log keeps it. Needs an"
              + " account that logs work or releases holds.")
  PieceAnswer answer(
      @PathVariable long id,
      @PathVariable String code,
      @PathVariable String check,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @RequestBody CheckWork body) {
    Answer answer = new Answer(body.yes(), body.number(), body.photo());
    once.log(
        body.ask(key, "answer " + code + " " + check),
        id,
        () -> log.answer(id, code, check, answer, body.pieceVersion(), body.noteOrNone()));
    return read.of(id);
  }

  @PostMapping("/pass")
  @Operation(
      summary = "Let a check pass that was not met",
      description = "The note says why. Needs an account that releases holds.")
  PieceAnswer letPass(
      @PathVariable long id,
      @PathVariable String code,
      @PathVariable String check,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @RequestBody StageWork body) {
    once.log(
        body.ask(key, "pass " + code + " " + check),
        id,
        () -> log.letPass(id, code, check, body.pieceVersion(), body.noteOrNone()));
    return read.of(id);
  }
}
