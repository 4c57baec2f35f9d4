package dev.flangewright.bench.web;

import dev.flangewright.bench.BeginPiece;
import dev.flangewright.bench.Hours;
import dev.flangewright.bench.LogStage;
import dev.flangewright.people.Refused;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;

/**
 * The page of a piece, and what is logged there. A refused entry comes back with what was typed.
 */
@Controller
class PieceController {

  private final PiecePages pages;
  private final LogStage log;
  private final BeginPiece begin;

  PieceController(PiecePages pages, LogStage log, BeginPiece begin) {
    this.pages = pages;
    this.log = log;
    this.begin = begin;
  }

  @GetMapping("/pieces/{id}")
  String show(@PathVariable long id, ModelMap model) {
    model.addAttribute("form", EntryForm.EMPTY);
    pages.fill(model, id);
    return "bench/piece";
  }

  @PostMapping("/parts/{id}/pieces")
  String begin(@PathVariable long id) {
    return "redirect:/pieces/" + begin.of(id).id();
  }

  @PostMapping("/pieces/{id}/stages/{code}/start")
  ModelAndView start(
      @PathVariable long id,
      @PathVariable String code,
      @ModelAttribute("form") EntryForm form,
      ModelMap model) {
    return entered(id, model, () -> log.start(id, code, form.seen(), form.note()));
  }

  @PostMapping("/pieces/{id}/stages/{code}/check")
  ModelAndView check(
      @PathVariable long id,
      @PathVariable String code,
      @ModelAttribute("form") EntryForm form,
      ModelMap model) {
    return entered(id, model, () -> log.check(id, code, form.seen(), form.note()));
  }

  @PostMapping("/pieces/{id}/stages/{code}/finish")
  ModelAndView finish(
      @PathVariable long id,
      @PathVariable String code,
      @ModelAttribute("form") EntryForm form,
      ModelMap model) {
    return entered(
        id, model, () -> log.finish(id, code, Hours.read(form.hours()), form.seen(), form.note()));
  }

  @PostMapping("/pieces/{id}/undo")
  ModelAndView undo(@PathVariable long id, @ModelAttribute("form") EntryForm form, ModelMap model) {
    return entered(id, model, () -> log.undo(id, form.seen(), form.reason()));
  }

  private ModelAndView entered(long id, ModelMap model, Runnable entry) {
    try {
      entry.run();
      return new ModelAndView("redirect:/pieces/" + id);
    } catch (Refused refused) {
      if (refused.kind() == Refused.Kind.UNKNOWN) {
        throw refused;
      }
      pages.fill(model, id);
      model.addAttribute("refused", refused.getMessage());
      return new ModelAndView("bench/piece", model, status(refused));
    }
  }

  private static HttpStatus status(Refused refused) {
    return refused.kind() == Refused.Kind.CONFLICT
        ? HttpStatus.CONFLICT
        : HttpStatus.UNPROCESSABLE_CONTENT;
  }
}
