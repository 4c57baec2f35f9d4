package dev.flangewright.parts.web;

import dev.flangewright.parts.CutoutEntry;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.parts.HoleEntry;
import dev.flangewright.parts.LayOutBlank;
import dev.flangewright.parts.LayoutEntry;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Holes, cutouts and trim allowance of a part, in one form with a few empty rows at its ends. */
@Controller
@MayEditRegister
@RequestMapping("/parts/{id}/layout")
class LayoutFormController {

  private static final String PAGE = "parts/layout-form";
  private static final int EMPTY_ROWS = 4;

  private final Parts parts;
  private final LayOutBlank layOut;

  LayoutFormController(Parts parts, LayOutBlank layOut) {
    this.parts = parts;
    this.layOut = layOut;
  }

  @GetMapping
  String edit(@PathVariable long id, Model model) {
    LayoutEntry now = LayoutEntry.of(part(id, model));
    model.addAttribute(
        "form",
        new LayoutEntry(
            now.trimAllowanceMm(),
            andEmpty(now.holes(), HoleEntry.EMPTY),
            andEmpty(now.cutouts(), CutoutEntry.EMPTY)));
    return PAGE;
  }

  @PostMapping
  String redraw(
      @PathVariable long id,
      @RequestParam long version,
      @ModelAttribute("form") LayoutEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response,
      RedirectAttributes afterwards) {
    try {
      layOut.redraw(id, version, form);
      afterwards.addFlashAttribute("notice", "The holes and cutouts are stored.");
      return "redirect:/parts/" + id;
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      part(id, model);
      return PAGE;
    }
  }

  private Part part(long id, Model model) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    model.addAttribute("part", part);
    model.addAttribute("build", part.build());
    model.addAttribute("kinds", PartChoices.HOLES);
    model.addAttribute("flanges", PartChoices.flanges(part));
    return part;
  }

  private static <T> List<T> andEmpty(List<T> rows, T empty) {
    return Stream.concat(rows.stream(), Collections.nCopies(EMPTY_ROWS, empty).stream()).toList();
  }
}
