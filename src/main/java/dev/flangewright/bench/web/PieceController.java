package dev.flangewright.bench.web;

import dev.flangewright.bench.BeginPiece;
import dev.flangewright.bench.CorrectBatch;
import dev.flangewright.bench.Hours;
import dev.flangewright.bench.LogStage;
import dev.flangewright.bench.TakeBackAtOnce;
import dev.flangewright.bench.WorkDone;
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
  private final TakeBackAtOnce atOnce;
  private final CorrectBatch batches;
  private final EntryDoor door;
  private final QuenchSent quench;

  PieceController(
      PiecePages pages,
      LogStage log,
      BeginPiece begin,
      TakeBackAtOnce atOnce,
      CorrectBatch batches,
      EntryDoor door,
      QuenchSent quench) {
    this.pages = pages;
    this.log = log;
    this.begin = begin;
    this.atOnce = atOnce;
    this.batches = batches;
    this.door = door;
    this.quench = quench;
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
          WorkDone done =
              form.done(hours).cutFrom(sent.getOrDefault("batch", "")).quenched(quench.said(sent));
          log.finish(id, code, seen, done);
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

  /** Puts down later, or anew, which batch it was cut from. */
  @PostMapping("/pieces/{id}/batch")
  ModelAndView setBatch(
      @PathVariable long id,
      @RequestParam(defaultValue = "") String batch,
      @ModelAttribute("form") EntryForm form,
      ModelMap model) {
    return entered(id, "", model, () -> batches.of(id, batch, form.seen(), form.reason()));
  }

  @PostMapping("/pieces/{id}/undo")
  ModelAndView undo(@PathVariable long id, @ModelAttribute("form") EntryForm form, ModelMap model) {
    return entered(id, "", model, () -> log.undo(id, form.seen(), form.reason()));
  }

  @PostMapping("/pieces/{id}/log/{ordinal}/undo")
  ModelAndView undoAtOnce(@PathVariable long id, @PathVariable int ordinal, ModelMap model) {
    model.addAttribute("form", EntryForm.EMPTY);
    return entered(id, "", model, () -> atOnce.entry(id, ordinal));
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
