package dev.flangewright.bench.web;

import dev.flangewright.bench.ChooseRoute;
import dev.flangewright.bench.KeepRoutes;
import dev.flangewright.bench.PartNature;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The routes of a build, and which parts take which. */
@Controller
class RoutesController {

  private static final String VIEW = "bench/routes";

  private final KeepRoutes routes;
  private final ChooseRoute choose;
  private final RoutesPages pages;
  private final Builds builds;

  RoutesController(KeepRoutes routes, ChooseRoute choose, RoutesPages pages, Builds builds) {
    this.routes = routes;
    this.choose = choose;
    this.pages = pages;
    this.builds = builds;
  }

  @GetMapping("/builds/{id}/routes")
  ModelAndView show(@PathVariable long id, ModelMap model) {
    fill(id, model);
    return new ModelAndView(VIEW, model);
  }

  /** Where the one route of a build was found before there were several. */
  @GetMapping("/builds/{id}/route")
  String moved(@PathVariable long id) {
    return "redirect:/builds/" + id + "/routes";
  }

  @PostMapping("/builds/{id}/routes")
  ModelAndView add(
      @PathVariable long id,
      @RequestParam(defaultValue = "") String name,
      @RequestParam long basedOn,
      ModelMap model) {
    try {
      return new ModelAndView("redirect:/routes/" + routes.draftNew(id, name, basedOn).id());
    } catch (Refused refused) {
      model.addAttribute("typedName", name);
      return refused(id, model, refused);
    }
  }

  @PostMapping("/builds/{id}/routes/usual")
  ModelAndView usual(
      @PathVariable long id,
      @RequestParam PartNature nature,
      @RequestParam String route,
      ModelMap model,
      RedirectAttributes said) {
    try {
      choose.usual(id, nature, route);
      return done(id, "Parts of this nature take “" + route + "” from now on.", said);
    } catch (Refused refused) {
      return refused(id, model, refused);
    }
  }

  @PostMapping("/builds/{id}/routes/parts")
  ModelAndView parts(
      @PathVariable long id,
      @RequestParam(defaultValue = "") String parts,
      @RequestParam(required = false) @Nullable String route,
      ModelMap model,
      RedirectAttributes said) {
    try {
      int chosen = choose.forParts(id, numbers(parts), route == null ? "" : route);
      return done(id, "The route of %d parts is chosen.".formatted(chosen), said);
    } catch (Refused refused) {
      model.addAttribute("typedParts", parts);
      return refused(id, model, refused);
    }
  }

  private static List<String> numbers(String typed) {
    return Arrays.stream(typed.split("[\\s,;]+")).filter(number -> !number.isEmpty()).toList();
  }

  private static ModelAndView done(long id, String words, RedirectAttributes said) {
    said.addFlashAttribute("done", words);
    return new ModelAndView("redirect:/builds/" + id + "/routes");
  }

  private ModelAndView refused(long id, ModelMap model, Refused refused) {
    RefusedPage.throwIfUnknown(refused);
    fill(id, model);
    return RefusedPage.of(VIEW, model, refused);
  }

  private void fill(long id, ModelMap model) {
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    model.addAttribute("routes", pages.of(id));
  }
}
