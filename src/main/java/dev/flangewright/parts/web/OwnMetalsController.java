package dev.flangewright.parts.web;

import dev.flangewright.materials.KeepOwnMetals;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Lists the metals that a build has entered from its certificates, and withdraws them. */
@Controller
class OwnMetalsController {

  private final Builds builds;
  private final KeepOwnMetals metals;

  OwnMetalsController(Builds builds, KeepOwnMetals metals) {
    this.builds = builds;
    this.metals = metals;
  }

  @GetMapping("/builds/{id}/metals")
  String list(@PathVariable long id, Model model) {
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    List<OwnMetalRow> rows = metals.of(id).stream().map(OwnMetalRow::of).toList();
    model.addAttribute("metals", rows.stream().filter(row -> row.withdrawal().isEmpty()).toList());
    model.addAttribute(
        "withdrawn", rows.stream().filter(row -> !row.withdrawal().isEmpty()).toList());
    return "parts/metals";
  }

  @PostMapping("/builds/{id}/metals/{metalId}/withdraw")
  String withdraw(
      @PathVariable long id,
      @PathVariable long metalId,
      @RequestParam long version,
      RedirectAttributes afterwards) {
    metals.withdraw(id, metalId, version);
    afterwards.addFlashAttribute(
        "notice", "The values are withdrawn; figures that used them are computed again.");
    return "redirect:/builds/" + id + "/metals";
  }
}
