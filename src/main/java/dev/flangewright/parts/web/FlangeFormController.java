package dev.flangewright.parts.web;

import dev.flangewright.parts.DrawFlange;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.FlangeEntry;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.PathEntry;
import dev.flangewright.parts.ReadPath;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Draws a flange and its contour. Whoever may not is told before filling in the form. */
@Controller
@MayEditRegister
class FlangeFormController {

  private static final String PAGE = "parts/flange-form";

  private final Parts parts;
  private final DrawFlange draw;
  private final PartChoices choices;

  FlangeFormController(Parts parts, DrawFlange draw, PartChoices choices) {
    this.parts = parts;
    this.draw = draw;
    this.choices = choices;
  }

  @ModelAttribute
  void kinds(Model model) {
    model.addAttribute("kinds", PartChoices.KINDS);
    model.addAttribute("yAxes", PartChoices.Y_AXES);
  }

  @GetMapping("/parts/{id}/flanges/new")
  String blank(@PathVariable long id, Model model) {
    part(id, model);
    model.addAttribute("form", FlangeEntry.EMPTY);
    return PAGE;
  }

  @PostMapping("/parts/{id}/flanges/new")
  String add(
      @PathVariable long id,
      @ModelAttribute("form") FlangeEntry form,
      BindingResult said,
      @ModelAttribute("path") PathEntry path,
      Model model,
      HttpServletResponse response) {
    try {
      Flange unused = draw.add(id, form);
      return sheet(id);
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      part(id, model);
      return PAGE;
    }
  }

  @GetMapping("/parts/{id}/flanges/{flangeId}/edit")
  String edit(@PathVariable long id, @PathVariable long flangeId, Model model) {
    model.addAttribute("form", FlangeEntry.of(flange(id, flangeId, model)));
    return PAGE;
  }

  @PostMapping("/parts/{id}/flanges/{flangeId}/edit")
  String redraw(
      @PathVariable long id,
      @PathVariable long flangeId,
      @RequestParam long version,
      @ModelAttribute("form") FlangeEntry form,
      BindingResult said,
      @ModelAttribute("path") PathEntry path,
      Model model,
      HttpServletResponse response) {
    try {
      draw.redraw(flangeId, version, form);
      return sheet(id);
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      flange(id, flangeId, model);
      return PAGE;
    }
  }

  /** Writes the stations of a drawn path into the form, to be looked at; nothing is stored. */
  @PostMapping("/parts/{id}/flanges/path")
  String read(
      @PathVariable long id,
      @RequestParam(required = false) @Nullable Long flangeId,
      @ModelAttribute("form") FlangeEntry form,
      @ModelAttribute("path") PathEntry path,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    if (flangeId == null) {
      part(id, model);
    } else {
      flange(id, flangeId, model);
    }
    try {
      ReadPath.Read read = ReadPath.of(path);
      model.addAttribute("form", form.along(read.lines()));
      model.addAttribute("read", PathSaid.of(read.drawn(), form.flangeKind()));
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      model.addAttribute("unread", "The path was not read; why stands beside it.");
    }
    return PAGE;
  }

  @PostMapping("/parts/{id}/flanges/{flangeId}/remove")
  String remove(
      @PathVariable long id,
      @PathVariable long flangeId,
      @RequestParam long version,
      RedirectAttributes afterwards) {
    draw.remove(flangeId, version);
    afterwards.addFlashAttribute("notice", "The flange is struck out of the drawing.");
    return sheet(id);
  }

  private Part part(long id, Model model) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    model.addAttribute("part", part);
    model.addAttribute("build", part.build());
    model.addAttribute("edges", choices.edges(part.build().id()));
    if (!model.containsAttribute("path")) {
      model.addAttribute("path", PathEntry.EMPTY);
    }
    return part;
  }

  private Flange flange(long partId, long flangeId, Model model) {
    Flange flange =
        part(partId, model).flanges().stream()
            .filter(one -> one.id() == flangeId)
            .findFirst()
            .orElseThrow(() -> Refused.unknown("flange", flangeId));
    model.addAttribute("flange", flange);
    return flange;
  }

  private static String sheet(long partId) {
    return "redirect:/parts/" + partId;
  }
}
