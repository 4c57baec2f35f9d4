package dev.flangewright.parts.web;

import dev.flangewright.forming.FormingException;
import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.parts.FigurePart;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.Suppose;
import dev.flangewright.parts.Supposition;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;

/**
 * A part figured as if it were made otherwise. The supposition stands in the page's address, so it
 * can be sent to somebody, and nothing is stored.
 */
@Controller
class SupposeController {

  private static final String PAGE = "parts/suppose";

  private final Parts parts;
  private final FigurePart figure;
  private final Suppose suppose;
  private final MaterialLibrary library;
  private final PartChoices choices;

  SupposeController(
      Parts parts,
      FigurePart figure,
      Suppose suppose,
      MaterialLibrary library,
      PartChoices choices) {
    this.parts = parts;
    this.figure = figure;
    this.suppose = suppose;
    this.library = library;
    this.choices = choices;
  }

  @GetMapping("/parts/{id}/suppose")
  String page(
      @PathVariable long id,
      @ModelAttribute Supposition asked,
      Model model,
      HttpServletResponse response) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    Supposition form = asked.over(Supposition.of(part));
    BindingResult said = new BeanPropertyBindingResult(form, "form");
    model.addAttribute("form", form);
    model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", said);
    model.addAttribute("part", part);
    model.addAttribute("build", part.build());
    model.addAttribute("edges", choices.edges(part.build().id()));
    model.addAttribute("metals", library.names(part.build().id()));
    try {
      model.addAttribute("view", SupposeView.of(part, figure.of(part), suppose.of(part, form)));
    } catch (FormingException refusal) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      model.addAttribute("problem", refusal.getMessage());
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
    }
    return PAGE;
  }
}
