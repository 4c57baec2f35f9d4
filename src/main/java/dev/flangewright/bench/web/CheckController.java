package dev.flangewright.bench.web;

import dev.flangewright.bench.EditRoute;
import dev.flangewright.bench.Step;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The checks at a stage of a draft; {@code seen} is the state of the draft the page showed. */
@Controller
@RequestMapping("/routes/{id}/stages/{stage}/checks")
class CheckController {

  private final EditRoute edit;
  private final RoutePages pages;

  CheckController(EditRoute edit, RoutePages pages) {
    this.edit = edit;
    this.pages = pages;
  }

  @PostMapping
  ModelAndView ask(
      @PathVariable long id,
      @PathVariable long stage,
      @RequestParam int seen,
      @ModelAttribute("checkForm") CheckForm form,
      ModelMap model) {
    model.addAttribute("newCheckTypedFor", stage);
    return pages.changedAt(stage, id, model, () -> edit.ask(id, seen, stage, form.card()));
  }

  @PostMapping("/{check}")
  ModelAndView change(
      @PathVariable long id,
      @PathVariable long stage,
      @PathVariable long check,
      @RequestParam int seen,
      @ModelAttribute("checkForm") CheckForm form,
      ModelMap model) {
    model.addAttribute("checkTypedFor", check);
    return pages.changedAt(
        stage, id, model, () -> edit.changeCheck(id, seen, stage, check, form.card()));
  }

  @PostMapping("/{check}/earlier")
  ModelAndView earlier(
      @PathVariable long id,
      @PathVariable long stage,
      @PathVariable long check,
      @RequestParam int seen,
      ModelMap model) {
    return pages.changedAt(
        stage, id, model, () -> edit.moveCheck(id, seen, stage, check, Step.EARLIER));
  }

  @PostMapping("/{check}/later")
  ModelAndView later(
      @PathVariable long id,
      @PathVariable long stage,
      @PathVariable long check,
      @RequestParam int seen,
      ModelMap model) {
    return pages.changedAt(
        stage, id, model, () -> edit.moveCheck(id, seen, stage, check, Step.LATER));
  }

  @PostMapping("/{check}/remove")
  ModelAndView remove(
      @PathVariable long id,
      @PathVariable long stage,
      @PathVariable long check,
      @RequestParam int seen,
      ModelMap model) {
    return pages.changedAt(stage, id, model, () -> edit.removeCheck(id, seen, stage, check));
  }
}
