package dev.flangewright.quality.web;

import dev.flangewright.people.Refused;
import dev.flangewright.quality.KeepScrapCauses;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;

/** The list of scrap causes. A refused change shows the list as it stands, with the reason. */
@Controller
@RequestMapping("/quality/causes")
class CausesController {

  private final KeepScrapCauses causes;

  CausesController(KeepScrapCauses causes) {
    this.causes = causes;
  }

  @GetMapping
  String show(ModelMap model) {
    model.addAttribute("form", CauseForm.EMPTY);
    model.addAttribute("causes", causes.all());
    return "quality/causes";
  }

  @PostMapping
  ModelAndView add(@ModelAttribute("form") CauseForm form, ModelMap model) {
    return changed(0, model, () -> causes.add(form.name(), form.usualReason(), form.prevention()));
  }

  @PostMapping("/{id}")
  ModelAndView reword(
      @PathVariable long id, @ModelAttribute("form") CauseForm form, ModelMap model) {
    return changed(
        id,
        model,
        () ->
            causes.reword(id, form.version(), form.name(), form.usualReason(), form.prevention()));
  }

  @PostMapping("/{id}/retire")
  ModelAndView retire(
      @PathVariable long id, @ModelAttribute("form") CauseForm form, ModelMap model) {
    return changed(0, model, () -> causes.retire(id, form.version(), true));
  }

  @PostMapping("/{id}/restore")
  ModelAndView restore(
      @PathVariable long id, @ModelAttribute("form") CauseForm form, ModelMap model) {
    return changed(0, model, () -> causes.retire(id, form.version(), false));
  }

  private ModelAndView changed(long typedFor, ModelMap model, Runnable change) {
    try {
      change.run();
      return new ModelAndView("redirect:/quality/causes");
    } catch (Refused refused) {
      if (refused.kind() == Refused.Kind.UNKNOWN) {
        throw refused;
      }
      model.addAttribute("causes", causes.all());
      model.addAttribute("typedFor", typedFor);
      model.addAttribute("refused", refused.getMessage());
      boolean conflict = refused.kind() == Refused.Kind.CONFLICT;
      return new ModelAndView(
          "quality/causes",
          model,
          conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
    }
  }
}
