package dev.flangewright.bench.web;

import dev.flangewright.bench.WhatNext;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** What needs forming next. */
@Controller
class BenchController {

  private final WhatNext whatNext;
  private final Builds builds;

  BenchController(WhatNext whatNext, Builds builds) {
    this.whatNext = whatNext;
    this.builds = builds;
  }

  @GetMapping("/builds/{id}/bench")
  String bench(@PathVariable long id, @RequestParam(defaultValue = "12") int show, Model model) {
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    model.addAttribute("bench", BenchPage.of(whatNext.all(id, SignedIn::may), show));
    return "bench/bench";
  }
}
