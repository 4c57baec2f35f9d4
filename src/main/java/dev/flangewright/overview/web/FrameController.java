package dev.flangewright.overview.web;

import dev.flangewright.overview.ReadHull;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.Frame;
import dev.flangewright.parts.FrameLine;
import dev.flangewright.parts.Frames;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** One frame, large. */
@Controller
class FrameController {

  private final Builds builds;
  private final Frames frames;
  private final ReadHull read;

  FrameController(Builds builds, Frames frames, ReadHull read) {
    this.builds = builds;
    this.frames = frames;
    this.read = read;
  }

  @GetMapping("/builds/{id}/frames/{code}")
  String frame(
      @PathVariable long id, @PathVariable String code, HttpServletRequest request, Model model) {
    Frame frame =
        frames.findByBuildIdAndCode(id, code).orElseThrow(() -> Refused.unknown("frame", code));
    List<String> codes =
        frames.lines(id).stream()
            .sorted(Comparator.comparingDouble(line -> line.positionMm().value()))
            .map(FrameLine::code)
            .toList();
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    model.addAttribute("place", "overview");
    model.addAttribute(
        "frame", FramePage.of(frame, read.ofFrame(id, frame), codes, request.getContextPath()));
    return "overview/frame";
  }
}
