package dev.flangewright.bench.web;

import dev.flangewright.bench.FindPiece;
import dev.flangewright.bench.Found;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Opens the piece whose number was typed, or whose label was read. */
@Controller
class FindController {

  private static final String PAGE = "bench/find";

  private final FindPiece find;
  private final Builds builds;

  FindController(FindPiece find, Builds builds) {
    this.find = find;
    this.builds = builds;
  }

  @GetMapping("/builds/{id}/find")
  String typed(@PathVariable long id, @RequestParam(defaultValue = "") String q, Model model) {
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    return opened(q.strip(), find.inBuild(id, q), model);
  }

  /** The address on a label: {@code /p/TW-F07-S3L} or {@code /p/TW-F07-S3L/2}, in any build. */
  @GetMapping("/p/{*label}")
  String label(@PathVariable String label, Model model) {
    String read = label.substring(1);
    return opened(read, find.anywhere(read), model);
  }

  private static String opened(String sought, List<Found> found, Model model) {
    if (found.size() == 1 && found.get(0).exact()) {
      return "redirect:" + found.get(0).address();
    }
    model.addAttribute("sought", sought);
    model.addAttribute("found", found);
    return PAGE;
  }
}
