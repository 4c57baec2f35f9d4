package dev.flangewright.parts.web;

import dev.flangewright.parts.Builds;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.parts.Frame;
import dev.flangewright.parts.FrameEntry;
import dev.flangewright.parts.Frames;
import dev.flangewright.parts.KeepFrames;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Adds a frame and changes where it stands. Whoever may not is told before filling in the form. */
@Controller
@MayEditRegister
class FrameFormController {

  private static final String PAGE = "parts/frame-form";

  private final Builds builds;
  private final Frames frames;
  private final KeepFrames keep;

  FrameFormController(Builds builds, Frames frames, KeepFrames keep) {
    this.builds = builds;
    this.frames = frames;
    this.keep = keep;
  }

  @GetMapping("/builds/{id}/frames/new")
  String blank(@PathVariable long id, Model model) {
    model.addAttribute("form", FrameEntry.EMPTY);
    return page(id, model);
  }

  @PostMapping("/builds/{id}/frames/new")
  String add(
      @PathVariable long id,
      @ModelAttribute("form") FrameEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      Frame unused = keep.add(id, form);
      return list(id);
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      return page(id, model);
    }
  }

  @GetMapping("/builds/{id}/frames/{frameId}/edit")
  String edit(@PathVariable long id, @PathVariable long frameId, Model model) {
    model.addAttribute("form", FrameEntry.of(frame(frameId, model)));
    return page(id, model);
  }

  @PostMapping("/builds/{id}/frames/{frameId}/edit")
  String move(
      @PathVariable long id,
      @PathVariable long frameId,
      @RequestParam long version,
      @ModelAttribute("form") FrameEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      keep.move(frameId, version, form);
      return list(id);
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      frame(frameId, model);
      return page(id, model);
    }
  }

  private Frame frame(long id, Model model) {
    Frame frame = frames.findById(id).orElseThrow(() -> Refused.unknown("frame", id));
    model.addAttribute("frame", frame);
    return frame;
  }

  private String page(long buildId, Model model) {
    model.addAttribute(
        "build", builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId)));
    return PAGE;
  }

  private static String list(long buildId) {
    return "redirect:/builds/" + buildId + "/frames";
  }
}
