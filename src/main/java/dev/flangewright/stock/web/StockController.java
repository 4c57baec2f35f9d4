package dev.flangewright.stock.web;

import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import dev.flangewright.stock.ListBatches;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The ledger of a build's batches. */
@Controller
class StockController {

  private final Builds builds;
  private final ListBatches list;

  StockController(Builds builds, ListBatches list) {
    this.builds = builds;
    this.list = list;
  }

  @GetMapping("/builds/{id}/stock")
  String batches(
      @PathVariable long id,
      @RequestParam(defaultValue = "ALL") BatchFilter show,
      @RequestParam(defaultValue = "") String alloy,
      Model model) {
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    model.addAttribute("page", StockPage.of(list.of(id), show, alloy));
    model.addAttribute("show", show);
    model.addAttribute("alloy", alloy);
    model.addAttribute("filters", BatchFilter.values());
    return "stock/stock";
  }
}
