package dev.flangewright.bench.web;

import dev.flangewright.bench.BeginPiece;
import dev.flangewright.bench.Pieces;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Refused;
import dev.flangewright.receipts.Ask;
import dev.flangewright.receipts.EntryKey;
import dev.flangewright.receipts.Once;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.util.UriComponentsBuilder;

/** A part and its pieces over HTTP. */
@RestController
@RequestMapping("/api/v1/parts/{id}")
class PartPiecesApi {

  private final Parts parts;
  private final Pieces pieces;
  private final BeginPiece begin;
  private final ReadPiece read;
  private final Once once;

  PartPiecesApi(Parts parts, Pieces pieces, BeginPiece begin, ReadPiece read, Once once) {
    this.parts = parts;
    this.pieces = pieces;
    this.begin = begin;
    this.read = read;
    this.once = once;
  }

  @GetMapping
  @Transactional(readOnly = true)
  @Operation(
      summary = "Read a part with its flanges and pieces",
      description = "As drawn; its figures stand under /parts/{id}/forming.")
  @Tag(name = "Parts")
  PartAnswer part(@PathVariable long id) {
    return parts
        .whole(id)
        .map(part -> PartAnswer.of(part, pieces.findByPartIdOrderByNumber(id)))
        .orElseThrow(() -> Refused.unknown("part", id));
  }

  @PostMapping("/pieces")
  @Operation(
      summary = "Begin the next piece of a part",
      description =
          "It takes a copy of the newest version of its part's route. Refused while another piece of the part is in"
              + " work. Needs an account that logs work.")
  @Tag(name = "Pieces")
  ResponseEntity<PieceAnswer> begin(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      UriComponentsBuilder here) {
    return created(here, once(key, "begin", id, () -> begin.of(id).id()));
  }

  @PostMapping("/pair")
  @Operation(
      summary = "Begin the next pieces of a part and of its other hand together",
      description =
          "Answers the piece of the named part; its twinPieceId names the other. Refused without"
              + " a twin, or while a piece of either is in work. Needs an account that logs work.")
  @Tag(name = "Pieces")
  ResponseEntity<PieceAnswer> beginPair(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      UriComponentsBuilder here) {
    return created(here, once(key, "begin pair", id, () -> begin.pairOf(id).get(0).id()));
  }

  private long once(@Nullable UUID key, String what, long partId, LongSupplier work) {
    return once.of(new Ask(key, null, what), "part " + partId, work);
  }

  private ResponseEntity<PieceAnswer> created(UriComponentsBuilder here, long piece) {
    return ResponseEntity.created(here.path("/api/v1/pieces/{piece}").buildAndExpand(piece).toUri())
        .body(read.of(piece));
  }
}
