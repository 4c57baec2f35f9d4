package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockSet;
import dev.flangewright.blocks.BlockSetEntry;
import dev.flangewright.blocks.KeepBlockSets;
import dev.flangewright.blocks.ReadBlockSet;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.people.MayKeepBlocks;
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

/** Records a block set, and changes what is known of it. */
@Controller
@MayKeepBlocks
class BlockSetFormController {

  private static final String PAGE = "blocks/set-form";

  private final Builds builds;
  private final ReadBlockSet read;
  private final KeepBlockSets keep;

  BlockSetFormController(Builds builds, ReadBlockSet read, KeepBlockSets keep) {
    this.builds = builds;
    this.read = read;
    this.keep = keep;
  }

  @GetMapping("/builds/{id}/blocks/new")
  String blank(@PathVariable long id, @RequestParam(defaultValue = "") String code, Model model) {
    model.addAttribute("form", BlockSetEntry.named(code));
    return page(id, model);
  }

  @PostMapping("/builds/{id}/blocks/new")
  String record(
      @PathVariable long id,
      @ModelAttribute("form") BlockSetEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      return "redirect:/block-sets/" + keep.record(id, form).id();
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      return page(id, model);
    }
  }

  @GetMapping("/block-sets/{id}/edit")
  String edit(@PathVariable long id, Model model) {
    model.addAttribute("form", BlockSetEntry.of(set(id, model)));
    return PAGE;
  }

  @PostMapping("/block-sets/{id}/edit")
  String change(
      @PathVariable long id,
      @RequestParam long version,
      @ModelAttribute("form") BlockSetEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      keep.change(id, version, form);
      return "redirect:/block-sets/" + id;
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      set(id, model);
      return PAGE;
    }
  }

  private String page(long buildId, Model model) {
    model.addAttribute(
        "build", builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId)));
    model.addAttribute("hands", BlockChoices.hands());
    return PAGE;
  }

  private BlockSet set(long id, Model model) {
    BlockSet set = read.of(id);
    model.addAttribute("set", set);
    model.addAttribute("build", set.build());
    model.addAttribute("hands", BlockChoices.hands());
    return set;
  }
}
