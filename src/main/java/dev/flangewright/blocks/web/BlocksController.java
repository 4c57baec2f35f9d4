package dev.flangewright.blocks.web;

import dev.flangewright.blocks.ListBlockSets;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The list of a build's block sets. */
@Controller
class BlocksController {

  private final Builds builds;
  private final ListBlockSets list;

  BlocksController(Builds builds, ListBlockSets list) {
    this.builds = builds;
    this.list = list;
  }

  @GetMapping("/builds/{id}/blocks")
  String sets(
      @PathVariable long id,
      @RequestParam(defaultValue = "ALL") SetFilter show,
      @RequestParam(defaultValue = "1") int page,
      Model model) {
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    model.addAttribute("page", BlocksPage.of(list.of(id), show, page));
    model.addAttribute("show", show);
    model.addAttribute("filters", SetFilter.values());
    return "blocks/blocks";
  }
}
