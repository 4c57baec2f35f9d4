package dev.flangewright.parts.web;

import dev.flangewright.parts.Builds;
import dev.flangewright.parts.FrameLine;
import dev.flangewright.parts.Frames;
import dev.flangewright.people.Refused;
import java.util.Comparator;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The list of a build's frames. */
@Controller
class FramesController {

  private final Builds builds;
  private final Frames frames;

  FramesController(Builds builds, Frames frames) {
    this.builds = builds;
    this.frames = frames;
  }

  @GetMapping("/builds/{id}/frames")
  String list(@PathVariable long id, Model model) {
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    model.addAttribute(
        "frames",
        frames.lines(id).stream()
            .sorted(Comparator.comparingDouble((FrameLine line) -> line.positionMm().value()))
            .toList());
    return "parts/frames";
  }
}
