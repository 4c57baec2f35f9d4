package dev.flangewright.bench.web;

import dev.flangewright.bench.LogFreezer;
import dev.flangewright.bench.LogOnce;
import dev.flangewright.receipts.Ask;
import dev.flangewright.receipts.EntryKey;
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

/** The quench and the freezer over HTTP. */
@RestController
@RequestMapping("/api/v1/pieces/{id}")
@Tag(name = "Pieces")
class HeatApi {

  private final LogFreezer log;
  private final LogOnce once;
  private final ReadPiece read;

  HeatApi(LogFreezer log, LogOnce once, ReadPiece read) {
    this.log = log;
    this.once = once;
    this.read = read;
  }

  @PostMapping("/quench")
  @Operation(
      summary = "Tell when a piece was quenched",
      description =
          "For a heat treatment that was finished without saying it; otherwise send it with the"
              + " finish. Needs an account that logs work and is cleared for the stage.")
  PieceAnswer quench(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @Valid @RequestBody QuenchRequest said) {
    once.log(
        new Ask(
            key, said.doneAt(), "quench %s, %s".formatted(said.quenchedAt(), said.noteOrNone())),
        id,
        () -> log.quenched(id, said.quenchedAt(), said.noteOrNone()));
    return read.of(id);
  }

  @PostMapping("/freezer/in")
  @Operation(
      summary = "Log that a piece was put into the freezer",
      description = "Only while its forming window is not past. Needs an account that logs work.")
  PieceAnswer into(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @Valid @RequestBody FreezeRequest said) {
    once.log(
        new Ask(key, said.doneAt(), "freeze %s, %s".formatted(said.celsius(), said.noteOrNone())),
        id,
        () -> log.into(id, said.celsius(), said.noteOrNone()));
    return read.of(id);
  }

  @PostMapping("/freezer/out")
  @Operation(
      summary = "Log that a piece was taken out of the freezer",
      description = "Needs an account that logs work.")
  PieceAnswer out(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @RequestBody(required = false) @Nullable ThawRequest body) {
    ThawRequest said = body == null ? ThawRequest.NOTHING_SAID : body;
    once.log(
        new Ask(key, said.doneAt(), "thaw, " + said.noteOrNone()),
        id,
        () -> log.out(id, said.noteOrNone()));
    return read.of(id);
  }

  @PostMapping("/late-forming")
  @Operation(
      summary = "Let a piece be formed past its forming window",
      description = "Before the stage is started, and with a reason. Needs the lead's account.")
  PieceAnswer letBeFormedLate(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @Valid @RequestBody LateFormingRequest said) {
    once.log(
        new Ask(key, said.doneAt(), "late forming, " + said.reason()),
        id,
        () -> log.letBeFormedLate(id, said.reason()));
    return read.of(id);
  }
}
