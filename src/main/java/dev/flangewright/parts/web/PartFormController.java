package dev.flangewright.parts.web;

import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.DrawPart;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartEntry;
import dev.flangewright.parts.Parts;
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

/** Enters a part and its drawing. Whoever may not is told before filling in the form. */
@Controller
@MayEditRegister
class PartFormController {

  private final Builds builds;
  private final Parts parts;
  private final PartChoices choices;
  private final MaterialLibrary library;
  private final DrawPart draw;

  PartFormController(
      Builds builds, Parts parts, PartChoices choices, MaterialLibrary library, DrawPart draw) {
    this.builds = builds;
    this.parts = parts;
    this.choices = choices;
    this.library = library;
    this.draw = draw;
  }

  @GetMapping("/builds/{id}/parts/new")
  String blank(@PathVariable long id, Model model) {
    model.addAttribute("form", PartEntry.EMPTY);
    return page(id, model);
  }

  @PostMapping("/builds/{id}/parts/new")
  String add(
      @PathVariable long id,
      @ModelAttribute("form") PartEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      return "redirect:/parts/" + draw.add(id, form).id();
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      return page(id, model);
    }
  }

  @GetMapping("/parts/{id}/edit")
  String edit(@PathVariable long id, Model model) {
    Part part = part(id, model);
    model.addAttribute("form", PartEntry.of(part));
    return page(part.build().id(), model);
  }

  @PostMapping("/parts/{id}/edit")
  String redraw(
      @PathVariable long id,
      @RequestParam long version,
      @ModelAttribute("form") PartEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      draw.redraw(id, version, form);
      return "redirect:/parts/" + id;
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      return page(part(id, model).build().id(), model);
    }
  }

  @PostMapping("/parts/{id}/remove")
  String remove(@PathVariable long id, @RequestParam long version, RedirectAttributes afterwards) {
    long buildId = draw.remove(id, version);
    afterwards.addFlashAttribute("notice", "The part is struck out of the register.");
    return "redirect:/builds/" + buildId + "/parts";
  }

  private Part part(long id, Model model) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    model.addAttribute("part", part);
    return part;
  }

  private String page(long buildId, Model model) {
    model.addAttribute(
        "build", builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId)));
    model.addAttribute("frames", choices.frames(buildId));
    model.addAttribute("hands", PartChoices.HANDS);
    model.addAttribute("metals", library.names(buildId));
    return "parts/part-form";
  }
}
