package dev.flangewright.bench.web;

import dev.flangewright.bench.Hands;
import dev.flangewright.bench.PassOnJob;
import dev.flangewright.bench.WhatNext;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** What needs forming next, and what somebody would rather leave to others today. */
@Controller
@RequestMapping("/builds/{id}/bench")
class BenchController {

  private static final int FEW = 12;

  private final WhatNext whatNext;
  private final PassOnJob passOn;
  private final Builds builds;

  BenchController(WhatNext whatNext, PassOnJob passOn, Builds builds) {
    this.whatNext = whatNext;
    this.passOn = passOn;
    this.builds = builds;
  }

  @GetMapping
  String bench(
      @PathVariable long id, @RequestParam(defaultValue = "" + FEW) int show, ModelMap model) {
    return page(id, show, PassOnForm.NONE, model);
  }

  @PostMapping("/pass-on")
  ModelAndView passOn(
      @PathVariable long id,
      @RequestParam long partId,
      @RequestParam(defaultValue = "") String reason,
      ModelMap model) {
    try {
      passOn.today(partId, reason);
      return new ModelAndView(list(id));
    } catch (Refused refused) {
      RefusedPage.throwIfUnknown(refused);
      PassOnForm typed = PassOnForm.refused(partId, reason, refused.getMessage());
      return RefusedPage.of(page(id, FEW, typed, model), model, refused);
    }
  }

  @PostMapping("/take-back")
  String takeBack(@PathVariable long id, @RequestParam long partId) {
    passOn.takeBack(partId);
    return list(id);
  }

  private String page(long buildId, int show, PassOnForm typed, ModelMap model) {
    Hands who = Hands.signedIn();
    model.addAttribute(
        "build", builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId)));
    model.addAttribute("bench", BenchPage.of(whatNext.all(buildId, who), show));
    model.addAttribute("looksOn", who.looksOn());
    model.addAttribute("passOn", typed);
    return "bench/bench";
  }

  private static String list(long buildId) {
    return "redirect:/builds/" + buildId + "/bench";
  }
}
