package dev.flangewright.bench.web;

import dev.flangewright.bench.LogReading;
import dev.flangewright.forming.FormingException;
import dev.flangewright.parts.DrawingRefused;
import dev.flangewright.parts.Fault;
import dev.flangewright.parts.GaugeEntry;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Gauge readings taken on a piece. */
@Controller
class ReadingController {

  private static final String PAGE = "bench/gauge";

  private final ReadingPages pages;
  private final LogReading log;
  private final EntryDoor door;

  ReadingController(ReadingPages pages, LogReading log, EntryDoor door) {
    this.pages = pages;
    this.log = log;
    this.door = door;
  }

  @GetMapping("/pieces/{id}/gauge")
  String page(
      @PathVariable long id,
      @RequestParam(required = false) @Nullable Long entry,
      @ModelAttribute GaugeEntry asked,
      Model model) {
    pages.fill(model, id, asked, List.of());
    if (entry != null) {
      pages.tell(model, id, entry);
    }
    return PAGE;
  }

  @PostMapping("/pieces/{id}/gauge")
  String log(
      @PathVariable long id,
      @ModelAttribute GaugeEntry written,
      Model model,
      HttpServletResponse response) {
    try {
      long entry = door.toPiece(id, () -> log.of(id, written).id());
      return "redirect:/pieces/%d/gauge?entry=%d".formatted(id, entry);
    } catch (DrawingRefused refusal) {
      door.throwIfSentLater(refusal);
      return again(
          id, written, model, response, refusal.faults().stream().map(Fault::sentence).toList());
    } catch (FormingException refusal) {
      door.throwIfSentLater(refusal);
      return again(id, written, model, response, List.of(String.valueOf(refusal.getMessage())));
    } catch (Refused refusal) {
      door.throwIfSentLater(refusal);
      if (refusal.kind() != Refused.Kind.CONFLICT) {
        throw refusal;
      }
      return again(id, written, model, response, List.of(String.valueOf(refusal.getMessage())));
    }
  }

  private String again(
      long id, GaugeEntry written, Model model, HttpServletResponse response, List<String> why) {
    response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    pages.fill(model, id, written, why);
    return PAGE;
  }
}
