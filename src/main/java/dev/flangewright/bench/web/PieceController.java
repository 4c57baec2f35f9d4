package dev.flangewright.bench.web;

import dev.flangewright.bench.BeginPiece;
import dev.flangewright.bench.Hours;
import dev.flangewright.bench.LogStage;
import dev.flangewright.people.Refused;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/**
 * The page of a piece, and what is logged there. A refused entry comes back with what was typed.
 */
@Controller
class PieceController {

  private final PiecePages pages;
  private final LogStage log;
  private final BeginPiece begin;
  private final EntryDoor door;

  PieceController(PiecePages pages, LogStage log, BeginPiece begin, EntryDoor door) {
    this.pages = pages;
    this.log = log;
    this.begin = begin;
    this.door = door;
  }

  @GetMapping("/pieces/{id}")
  String show(
      @PathVariable long id, @RequestParam(defaultValue = "") String stage, ModelMap model) {
    model.addAttribute("form", EntryForm.EMPTY);
    pages.fill(model, id, stage);
    return "bench/piece";
  }

  @PostMapping("/parts/{id}/pieces")
  String begin(@PathVariable long id) {
    return "redirect:/pieces/" + door.toPart(id, () -> begin.of(id).id());
  }

  @PostMapping("/parts/{id}/pair")
  String beginPair(@PathVariable long id) {
    return "redirect:/pieces/" + door.toPart(id, () -> begin.pairOf(id).get(0).id());
  }

  @PostMapping("/pieces/{id}/stages/{code}/start")
  ModelAndView start(
      @PathVariable long id,
      @PathVariable String code,
      @ModelAttribute("form") EntryForm form,
      ModelMap model) {
    return entered(id, code, model, () -> log.start(id, code, form.seen(), form.note()));
  }

  @PostMapping("/pieces/{id}/stages/{code}/check")
  ModelAndView check(
      @PathVariable long id,
      @PathVariable String code,
      @ModelAttribute("form") EntryForm form,
      ModelMap model) {
    return entered(id, code, model, () -> log.check(id, code, form.seen(), form.note()));
  }

  /** What was answered on the way stays, even if the stage cannot be finished yet. */
  @PostMapping("/pieces/{id}/stages/{code}/finish")
  ModelAndView finish(
      @PathVariable long id,
      @PathVariable String code,
      @ModelAttribute("form") EntryForm form,
      @RequestParam Map<String, String> sent,
      ModelMap model) {
    model.addAttribute("typed", sent);
    return entered(
        id,
        code,
        model,
        () -> {
          Double hours = Hours.read(form.hours());
          Long seen = AnswersSent.of(sent).logOn(log, id, code, form.seen());
          log.finish(id, code, hours, form.blockDamage(), seen, form.note());
        });
  }

  @PostMapping("/pieces/{id}/stages/{code}/answers")
  ModelAndView answer(
      @PathVariable long id,
      @PathVariable String code,
      @ModelAttribute("form") EntryForm form,
      @RequestParam Map<String, String> sent,
      ModelMap model) {
    model.addAttribute("typed", sent);
    return entered(id, code, model, () -> AnswersSent.of(sent).logOn(log, id, code, form.seen()));
  }

  @PostMapping("/pieces/{id}/stages/{code}/checks/{check}/pass")
  ModelAndView letPass(
      @PathVariable long id,
      @PathVariable String code,
      @PathVariable String check,
      @ModelAttribute("form") EntryForm form,
      ModelMap model) {
    return entered(id, code, model, () -> log.letPass(id, code, check, form.seen(), form.note()));
  }

  @PostMapping("/pieces/{id}/undo")
  ModelAndView undo(@PathVariable long id, @ModelAttribute("form") EntryForm form, ModelMap model) {
    return entered(id, "", model, () -> log.undo(id, form.seen(), form.reason()));
  }

  private ModelAndView entered(long id, String code, ModelMap model, Runnable entry) {
    try {
      door.through(id, entry);
      return new ModelAndView("redirect:/pieces/" + id);
    } catch (Refused refused) {
      door.throwIfSentLater(refused);
      RefusedPage.throwIfUnknown(refused);
      pages.fill(model, id, code);
      return RefusedPage.of("bench/piece", model, refused);
    }
  }
}
