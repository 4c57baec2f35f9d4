package dev.flangewright.blocks.web;

import dev.flangewright.blocks.Block;
import dev.flangewright.blocks.BlockAction;
import dev.flangewright.blocks.Blocks;
import dev.flangewright.blocks.HandleBlock;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/** One block set, and what happens to its blocks. */
@Controller
class BlockSetController {

  private final BlockSetPages pages;
  private final HandleBlock handle;
  private final Blocks blocks;

  BlockSetController(BlockSetPages pages, HandleBlock handle, Blocks blocks) {
    this.pages = pages;
    this.handle = handle;
    this.blocks = blocks;
  }

  @GetMapping("/block-sets/{id}")
  String show(@PathVariable long id, Model model) {
    return pages.fill(model, id);
  }

  @PostMapping("/blocks/{id}/condition")
  String change(
      @PathVariable long id,
      @ModelAttribute("form") ConditionForm form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      Block block = handle.by(id, action(form), form.seen(), form.why());
      return "redirect:/block-sets/" + block.blockSet().id() + "#block-" + id;
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      model.addAttribute("typedFor", id);
      model.addAttribute("refused", refusal.getMessage());
      return pages.fill(model, setOf(id));
    }
  }

  private static BlockAction action(ConditionForm form) {
    BlockAction action = form.action();
    if (action == null) {
      throw Refused.unacceptable("action is missing: say what happened to the block.");
    }
    return action;
  }

  private long setOf(long blockId) {
    return blocks
        .findWithSetById(blockId)
        .orElseThrow(() -> Refused.unknown("block", blockId))
        .blockSet()
        .id();
  }
}
