package dev.flangewright.parts.web;

import dev.flangewright.materials.KeepOwnMetals;
import dev.flangewright.materials.OwnMetal;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Enters a certificate's values. Whoever may not is told before filling in the form. */
@Controller
@MayEditRegister
class OwnMetalFormController {

  private static final String PAGE = "parts/metal-form";

  private final Builds builds;
  private final KeepOwnMetals metals;

  OwnMetalFormController(Builds builds, KeepOwnMetals metals) {
    this.builds = builds;
    this.metals = metals;
  }

  @GetMapping("/builds/{id}/metals/new")
  String blank(@PathVariable long id, Model model) {
    model.addAttribute("form", OwnMetalForm.EMPTY);
    return page(id, model);
  }

  @PostMapping("/builds/{id}/metals/new")
  String add(
      @PathVariable long id,
      @ModelAttribute("form") OwnMetalForm form,
      BindingResult said,
      Model model,
      HttpServletResponse response,
      RedirectAttributes afterwards) {
    String page = page(id, model);
    try {
      OwnMetal unused = metals.add(id, form.entry());
      return list(id, afterwards);
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      return page;
    }
  }

  @GetMapping("/builds/{id}/metals/{metalId}/edit")
  String edit(@PathVariable long id, @PathVariable long metalId, Model model) {
    model.addAttribute("form", OwnMetalForm.of(metal(id, metalId, model)));
    return page(id, model);
  }

  @PostMapping("/builds/{id}/metals/{metalId}/edit")
  String change(
      @PathVariable long id,
      @PathVariable long metalId,
      @RequestParam long version,
      @ModelAttribute("form") OwnMetalForm form,
      BindingResult said,
      Model model,
      HttpServletResponse response,
      RedirectAttributes afterwards) {
    try {
      OwnMetal unused = metals.change(id, metalId, version, form.entry());
      return list(id, afterwards);
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      OwnMetal unchanged = metal(id, metalId, model);
      return page(unchanged.buildId(), model);
    }
  }

  private OwnMetal metal(long buildId, long metalId, Model model) {
    OwnMetal metal = metals.one(buildId, metalId);
    model.addAttribute("metal", metal);
    return metal;
  }

  private String page(long buildId, Model model) {
    model.addAttribute(
        "build", builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId)));
    return PAGE;
  }

  private static String list(long buildId, RedirectAttributes afterwards) {
    afterwards.addFlashAttribute(
        "notice", "The values are entered; figures of this metal are computed again.");
    return "redirect:/builds/" + buildId + "/metals";
  }
}
