package dev.flangewright.overview.web;

import dev.flangewright.bench.Hands;
import dev.flangewright.overview.Overview;
import dev.flangewright.overview.ReadOverview;
import dev.flangewright.parts.BuildLine;
import dev.flangewright.parts.Builds;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** How far a build is; the first page of an installation. */
@Controller
class OverviewController {

  private final ReadOverview read;
  private final Builds builds;

  OverviewController(ReadOverview read, Builds builds) {
    this.read = read;
    this.builds = builds;
  }

  /** The overview of the only build, or the list of them. */
  @GetMapping("/")
  String home(HttpServletRequest request, Model model) {
    List<BuildLine> all = builds.lines();
    if (all.size() == 1) {
      return of(all.get(0).id(), request, model);
    }
    model.addAttribute("builds", all);
    return "builds/list";
  }

  @GetMapping("/builds/{id}")
  String of(@PathVariable long id, HttpServletRequest request, Model model) {
    Overview overview = read.of(id, Hands.signedIn());
    model.addAttribute("build", Map.of("id", id, "name", overview.name()));
    model.addAttribute("place", "overview");
    if (overview.parts().total() == 0) {
      return "overview/empty";
    }
    model.addAttribute("overview", overview);
    model.addAttribute("page", OverviewPage.of(overview, request.getContextPath()));
    return "overview/build";
  }
}
