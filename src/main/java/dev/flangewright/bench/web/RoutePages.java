package dev.flangewright.bench.web;

import dev.flangewright.bench.CheckKind;
import dev.flangewright.bench.StageKind;
import dev.flangewright.blocks.BlockKind;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Clearance;
import dev.flangewright.people.Refused;
import java.util.Arrays;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.ui.ModelMap;
import org.springframework.web.servlet.ModelAndView;

/**
 * The page of one version of a route. A refused change shows it as it stands, with the reason and
 * with what was typed.
 */
@Component
class RoutePages {

  private static final String VIEW = "bench/route";
  private static final String ADDRESS = "redirect:/routes/";

  private final ReadRoute read;
  private final Builds builds;

  RoutePages(ReadRoute read, Builds builds) {
    this.read = read;
    this.builds = builds;
  }

  ModelAndView show(long routeId, ModelMap model) {
    fill(routeId, model);
    return new ModelAndView(VIEW, model);
  }

  /** Makes a change and shows the page anew. */
  ModelAndView changed(long routeId, ModelMap model, Runnable change) {
    return changed(ADDRESS + routeId, routeId, model, change);
  }

  /** Makes a change at a stage and shows the page anew, scrolled to that stage. */
  ModelAndView changedAt(long stageId, long routeId, ModelMap model, Runnable change) {
    return changed(ADDRESS + routeId + "#stage-" + stageId, routeId, model, change);
  }

  private ModelAndView changed(String then, long routeId, ModelMap model, Runnable change) {
    try {
      change.run();
      return new ModelAndView(then);
    } catch (Refused refused) {
      RefusedPage.throwIfUnknown(refused);
      fill(routeId, model);
      return RefusedPage.of(VIEW, model, refused);
    }
  }

  private void fill(long routeId, ModelMap model) {
    RoutePage route = read.of(routeId);
    model.addAttribute("route", route);
    model.addAttribute(
        "build",
        builds
            .findById(route.buildId())
            .orElseThrow(() -> Refused.unknown("build", route.buildId())));
    model.addAttribute(
        "workKinds",
        Arrays.stream(StageKind.values()).filter(kind -> !kind.byInspection()).toList());
    model.addAttribute("clearances", Clearance.values());
    model.addAttribute("blockKinds", BlockKind.values());
    model.addAttribute("checkKinds", List.of(CheckKind.values()));
    model.addAttribute("newStage", StageForm.EMPTY);
    model.addAttribute("newCheck", CheckForm.EMPTY);
  }
}
