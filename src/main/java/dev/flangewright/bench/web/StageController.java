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

/** The stages of a draft, changed one at a time; {@code seen} is the state the page showed. */
@Controller
@RequestMapping("/routes/{id}/stages")
class StageController {

  private final EditRoute edit;
  private final RoutePages pages;

  StageController(EditRoute edit, RoutePages pages) {
    this.edit = edit;
    this.pages = pages;
  }

  @PostMapping
  ModelAndView add(
      @PathVariable long id,
      @RequestParam int seen,
      @ModelAttribute("stageForm") StageForm form,
      ModelMap model) {
    model.addAttribute("typedFor", 0L);
    return pages.changed(id, model, () -> edit.add(id, seen, form.plan()));
  }

  @PostMapping("/{stage}")
  ModelAndView change(
      @PathVariable long id,
      @PathVariable long stage,
      @RequestParam int seen,
      @ModelAttribute("stageForm") StageForm form,
      ModelMap model) {
    model.addAttribute("typedFor", stage);
    return pages.changedAt(stage, id, model, () -> edit.change(id, seen, stage, form.plan()));
  }

  @PostMapping("/{stage}/earlier")
  ModelAndView earlier(
      @PathVariable long id, @PathVariable long stage, @RequestParam int seen, ModelMap model) {
    return pages.changedAt(stage, id, model, () -> edit.move(id, seen, stage, Step.EARLIER));
  }

  @PostMapping("/{stage}/later")
  ModelAndView later(
      @PathVariable long id, @PathVariable long stage, @RequestParam int seen, ModelMap model) {
    return pages.changedAt(stage, id, model, () -> edit.move(id, seen, stage, Step.LATER));
  }

  @PostMapping("/{stage}/remove")
  ModelAndView remove(
      @PathVariable long id, @PathVariable long stage, @RequestParam int seen, ModelMap model) {
    return pages.changed(id, model, () -> edit.remove(id, seen, stage));
  }
}
