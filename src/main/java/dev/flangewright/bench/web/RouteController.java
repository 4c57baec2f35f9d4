package dev.flangewright.bench.web;

import dev.flangewright.bench.KeepRoute;
import dev.flangewright.bench.StageKind;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import java.util.Arrays;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;

/** The route editor. A refused change shows the route as it stands, with the reason. */
@Controller
@RequestMapping("/builds/{id}/route")
class RouteController {

  private static final StageForm EMPTY = new StageForm("", null, "", 0, null);

  private final KeepRoute route;
  private final Builds builds;

  RouteController(KeepRoute route, Builds builds) {
    this.route = route;
    this.builds = builds;
  }

  @GetMapping
  String show(@PathVariable long id, ModelMap model) {
    model.addAttribute("form", EMPTY);
    fill(id, model);
    return "bench/route";
  }

  @PostMapping("/stages")
  ModelAndView add(@PathVariable long id, @ModelAttribute("form") StageForm form, ModelMap model) {
    return changed(id, 0, model, () -> route.add(id, form.sealed(), form.plan()));
  }

  @PostMapping("/stages/{stage}")
  ModelAndView change(
      @PathVariable long id,
      @PathVariable long stage,
      @ModelAttribute("form") StageForm form,
      ModelMap model) {
    return changed(id, stage, model, () -> route.change(id, form.sealed(), stage, form.plan()));
  }

  @PostMapping("/stages/{stage}/earlier")
  ModelAndView earlier(
      @PathVariable long id,
      @PathVariable long stage,
      @ModelAttribute("form") StageForm form,
      ModelMap model) {
    return changed(id, 0, model, () -> route.moveEarlier(id, form.sealed(), stage));
  }

  @PostMapping("/stages/{stage}/later")
  ModelAndView later(
      @PathVariable long id,
      @PathVariable long stage,
      @ModelAttribute("form") StageForm form,
      ModelMap model) {
    return changed(id, 0, model, () -> route.moveLater(id, form.sealed(), stage));
  }

  @PostMapping("/stages/{stage}/remove")
  ModelAndView remove(
      @PathVariable long id,
      @PathVariable long stage,
      @ModelAttribute("form") StageForm form,
      ModelMap model) {
    return changed(id, 0, model, () -> route.remove(id, form.sealed(), stage));
  }

  private ModelAndView changed(long id, long stage, ModelMap model, Runnable change) {
    try {
      change.run();
      return new ModelAndView("redirect:/builds/" + id + "/route");
    } catch (Refused refused) {
      if (refused.kind() == Refused.Kind.UNKNOWN) {
        throw refused;
      }
      fill(id, model);
      model.addAttribute("typedFor", stage);
      model.addAttribute("refused", refused.getMessage());
      boolean conflict = refused.kind() == Refused.Kind.CONFLICT;
      return new ModelAndView(
          "bench/route", model, conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
    }
  }

  private void fill(long id, ModelMap model) {
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    model.addAttribute("route", route.of(id));
    model.addAttribute(
        "workKinds",
        Arrays.stream(StageKind.values()).filter(kind -> !kind.byInspection()).toList());
  }
}
