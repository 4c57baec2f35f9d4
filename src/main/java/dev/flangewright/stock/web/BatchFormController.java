package dev.flangewright.stock.web;

import dev.flangewright.parts.Builds;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.people.MayKeepStock;
import dev.flangewright.people.Refused;
import dev.flangewright.stock.Batch;
import dev.flangewright.stock.BatchEntry;
import dev.flangewright.stock.KeepBatches;
import dev.flangewright.stock.ReadBatch;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Records a batch, and changes what is known of it. */
@Controller
@MayKeepStock
class BatchFormController {

  private static final String PAGE = "stock/batch-form";

  private final Builds builds;
  private final ReadBatch read;
  private final KeepBatches keep;

  BatchFormController(Builds builds, ReadBatch read, KeepBatches keep) {
    this.builds = builds;
    this.read = read;
    this.keep = keep;
  }

  @GetMapping("/builds/{id}/stock/new")
  String blank(@PathVariable long id, Model model) {
    model.addAttribute("form", BatchEntry.of("", "", "", "", ""));
    return page(id, model);
  }

  @PostMapping("/builds/{id}/stock/new")
  String record(
      @PathVariable long id,
      @ModelAttribute("form") BatchEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      return "redirect:/batches/" + keep.record(id, form).id();
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      return page(id, model);
    }
  }

  @GetMapping("/batches/{id}/edit")
  String edit(@PathVariable long id, Model model) {
    model.addAttribute("form", BatchEntry.of(batch(id, model)));
    return PAGE;
  }

  @PostMapping("/batches/{id}/edit")
  String change(
      @PathVariable long id,
      @RequestParam long version,
      @ModelAttribute("form") BatchEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      return "redirect:/batches/" + keep.change(id, version, form).id();
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      batch(id, model);
      return PAGE;
    }
  }

  private String page(long buildId, Model model) {
    model.addAttribute(
        "build", builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId)));
    return PAGE;
  }

  private Batch batch(long id, Model model) {
    Batch batch = read.of(id);
    model.addAttribute("batch", batch);
    String unused = page(batch.build().id(), model);
    return batch;
  }
}
