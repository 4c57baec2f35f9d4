package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockAction;
import dev.flangewright.blocks.Blocks;
import dev.flangewright.blocks.HandleBlock;
import dev.flangewright.people.Refused;
import dev.flangewright.receipts.Once;
import dev.flangewright.receipts.SentForm;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;

/** One block set, and what happens to its blocks. */
@Controller
class BlockSetController {

  private final BlockSetPages pages;
  private final HandleBlock handle;
  private final Blocks blocks;
  private final Once once;
  private final SentForm sent;

  BlockSetController(
      BlockSetPages pages, HandleBlock handle, Blocks blocks, Once once, SentForm sent) {
    this.pages = pages;
    this.handle = handle;
    this.blocks = blocks;
    this.once = once;
    this.sent = sent;
  }

  @GetMapping("/block-sets/{id}")
  String show(@PathVariable long id, ModelMap model) {
    return pages.fill(model, id);
  }

  @PostMapping("/blocks/{id}/condition")
  ModelAndView change(
      @PathVariable long id, @ModelAttribute("form") ConditionForm form, ModelMap model) {
    try {
      long set =
          once.of(
              sent.ask(),
              "block " + id,
              () -> handle.by(id, action(form), form.seen(), form.why()).blockSet().id());
      return new ModelAndView("redirect:/block-sets/" + set + "#block-" + id);
    } catch (Refused refusal) {
      sent.throwIfSentLater(refusal);
      return refused(id, refusal, model);
    }
  }

  private ModelAndView refused(long blockId, Refused refusal, ModelMap model) {
    if (refusal.kind() == Refused.Kind.UNKNOWN) {
      throw refusal;
    }
    model.addAttribute("typedFor", blockId);
    model.addAttribute("refused", refusal.getMessage());
    boolean conflict = refusal.kind() == Refused.Kind.CONFLICT;
    return new ModelAndView(
        pages.fill(model, setOf(blockId)),
        model,
        conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
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
