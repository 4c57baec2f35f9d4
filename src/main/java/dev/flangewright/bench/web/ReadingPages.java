package dev.flangewright.bench.web;

import dev.flangewright.bench.GaugeLog;
import dev.flangewright.bench.GaugeLogs;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceState;
import dev.flangewright.bench.Pieces;
import dev.flangewright.forming.FormingException;
import dev.flangewright.parts.GaugeEntry;
import dev.flangewright.parts.GaugeKind;
import dev.flangewright.parts.GaugeReading;
import dev.flangewright.parts.ReadGauge;
import dev.flangewright.parts.drawing.GaugedStretch;
import dev.flangewright.people.Refused;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;

/** Reads everything that the page of a piece's gauge readings shows. */
@Component
class ReadingPages {

  private final Pieces pieces;
  private final GaugeLogs readings;
  private final ReadGauge gauge;
  private final Clock clock;

  ReadingPages(Pieces pieces, GaugeLogs readings, ReadGauge gauge, Clock clock) {
    this.pieces = pieces;
    this.readings = readings;
    this.gauge = gauge;
    this.clock = clock;
  }

  /** What the page needs to know of the piece. */
  record OfPiece(long id, int number, boolean inWork) {}

  @Transactional(readOnly = true)
  void fill(Model model, long pieceId, GaugeEntry asked, List<String> problems) {
    Piece piece =
        pieces.findWithPartById(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    GaugeEntry form = asked.on(piece.part());
    model.addAttribute("build", piece.part().build());
    model.addAttribute("part", piece.part());
    model.addAttribute(
        "piece", new OfPiece(pieceId, piece.number(), piece.state() == PieceState.IN_WORK));
    model.addAttribute("form", form);
    model.addAttribute(
        BindingResult.MODEL_KEY_PREFIX + "form", new BeanPropertyBindingResult(form, "form"));
    model.addAttribute("gauges", List.of(GaugeKind.values()));
    model.addAttribute("gauge", GaugeKind.named(form.gauge()));
    model.addAttribute("problems", problems);
    model.addAttribute("readings", newestFirst(pieceId));
  }

  private List<ReadingLine> newestFirst(long pieceId) {
    List<ReadingLine> lines = new ArrayList<>();
    readings
        .findByPieceIdOrderById(pieceId)
        .forEach(log -> lines.add(ReadingLine.of(log, clock.instant())));
    Collections.reverse(lines);
    return lines;
  }

  /** The answer that was given, and where on the part as it is drawn today. */
  @Transactional(readOnly = true)
  void tell(Model model, long pieceId, long entryId) {
    GaugeLog log =
        readings
            .findById(entryId)
            .filter(one -> one.piece().id() == pieceId)
            .orElseThrow(() -> Refused.unknown("reading", entryId));
    model.addAttribute("told", log.answer());
    try {
      GaugeReading reading = gauge.of(log.piece().part(), log.written());
      model.addAttribute("answer", reading);
      model.addAttribute("drawing", GaugedStretch.of("gauged", reading));
    } catch (FormingException | Refused drawnOtherwiseSince) {
      model.addAttribute(
          "problems",
          List.of("The drawing was changed since: " + drawnOtherwiseSince.getMessage()));
    }
  }
}
