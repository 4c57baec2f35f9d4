package dev.flangewright.stock.web;

import dev.flangewright.people.Refused;
import dev.flangewright.stock.Batch;
import dev.flangewright.stock.BatchAction;
import dev.flangewright.stock.HandleBatch;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;

/** One batch, and what happens to it. */
@Controller
class BatchController {

  private final BatchPages pages;
  private final HandleBatch handle;

  BatchController(BatchPages pages, HandleBatch handle) {
    this.pages = pages;
    this.handle = handle;
  }

  @GetMapping("/batches/{id}")
  String show(@PathVariable long id, ModelMap model) {
    return pages.fill(model, id);
  }

  @PostMapping("/batches/{id}/condition")
  ModelAndView change(
      @PathVariable long id, @ModelAttribute("form") BatchForm form, ModelMap model) {
    try {
      Batch batch = handle.by(id, action(form), form.seen(), form.words());
      return new ModelAndView("redirect:/batches/" + batch.id());
    } catch (Refused refusal) {
      return refused(id, refusal, model);
    }
  }

  private ModelAndView refused(long id, Refused refusal, ModelMap model) {
    if (refusal.kind() == Refused.Kind.UNKNOWN) {
      throw refusal;
    }
    model.addAttribute("refused", refusal.getMessage());
    boolean conflict = refusal.kind() == Refused.Kind.CONFLICT;
    return new ModelAndView(
        pages.fill(model, id),
        model,
        conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
  }

  private static BatchAction action(BatchForm form) {
    BatchAction action = form.action();
    if (action == null) {
      throw Refused.unacceptable("action is missing: say what happened to the batch.");
    }
    return action;
  }
}
