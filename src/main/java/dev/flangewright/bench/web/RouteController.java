package dev.flangewright.bench.web;

import dev.flangewright.bench.KeepRoutes;
import dev.flangewright.bench.Route;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** One version of a route: looked at, drafted anew, released or thrown away. */
@Controller
@RequestMapping("/routes/{id}")
class RouteController {

  private final KeepRoutes routes;
  private final RoutePages pages;

  RouteController(KeepRoutes routes, RoutePages pages) {
    this.routes = routes;
    this.pages = pages;
  }

  @GetMapping
  ModelAndView show(@PathVariable long id, ModelMap model) {
    return pages.show(id, model);
  }

  @PostMapping("/draft")
  String draft(@PathVariable long id) {
    return "redirect:/routes/" + routes.draftNext(id).id();
  }

  @PostMapping("/release")
  ModelAndView release(@PathVariable long id, @RequestParam int seen, ModelMap model) {
    return pages.changed(id, model, () -> routes.release(id, seen));
  }

  @PostMapping("/discard")
  ModelAndView discard(@PathVariable long id, @RequestParam int seen, ModelMap model) {
    try {
      Route gone = routes.discard(id, seen);
      return new ModelAndView("redirect:/builds/" + gone.buildId() + "/routes");
    } catch (Refused refused) {
      return pages.changed(
          id,
          model,
          () -> {
            throw refused;
          });
    }
  }
}
