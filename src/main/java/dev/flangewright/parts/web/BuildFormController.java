package dev.flangewright.parts.web;

import dev.flangewright.parts.Build;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.parts.MakeBuild;
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

/** Makes a build and names it anew. Whoever may not is told before filling in the form. */
@Controller
@MayEditRegister
class BuildFormController {

  private final Builds builds;
  private final MakeBuild make;

  BuildFormController(Builds builds, MakeBuild make) {
    this.builds = builds;
    this.make = make;
  }

  @GetMapping("/builds/new")
  String blank(Model model) {
    model.addAttribute("form", new BuildForm("", ""));
    return "builds/form";
  }

  @PostMapping("/builds/new")
  String make(
      @ModelAttribute("form") BuildForm form, BindingResult said, HttpServletResponse response) {
    try {
      return "redirect:/builds/" + make.named(form.name(), form.note()).id() + "/parts";
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      return "builds/form";
    }
  }

  @GetMapping("/builds/{id}/edit")
  String edit(@PathVariable long id, Model model) {
    Build build = build(id, model);
    model.addAttribute("form", new BuildForm(build.name(), build.note()));
    return "builds/form";
  }

  @PostMapping("/builds/{id}/edit")
  String rename(
      @PathVariable long id,
      @RequestParam long version,
      @ModelAttribute("form") BuildForm form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      make.rename(id, version, form.name(), form.note());
      return "redirect:/builds/" + id + "/parts";
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      build(id, model);
      return "builds/form";
    }
  }

  private Build build(long id, Model model) {
    Build build = builds.findById(id).orElseThrow(() -> Refused.unknown("build", id));
    model.addAttribute("build", build);
    return build;
  }
}
