package dev.flangewright.parts.web;

import dev.flangewright.parts.Builds;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The list of builds. */
@Controller
class BuildsController {

  private final Builds builds;

  BuildsController(Builds builds) {
    this.builds = builds;
  }

  @GetMapping("/builds")
  String list(Model model) {
    model.addAttribute("builds", builds.lines());
    return "builds/list";
  }
}
