package dev.flangewright.quality.web;

import dev.flangewright.people.Refused;
import dev.flangewright.photos.TakePhoto;
import dev.flangewright.photos.TakenPhoto;
import dev.flangewright.quality.Outcome;
import dev.flangewright.quality.RecordInspection;
import dev.flangewright.receipts.Once;
import dev.flangewright.receipts.SentForm;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;

/** Records an inspection of a piece, scrapping included. */
@Controller
class InspectionController {

  private final InspectionPages pages;
  private final RecordInspection record;
  private final Once once;
  private final SentForm sent;
  private final TakePhoto take;

  InspectionController(
      InspectionPages pages, RecordInspection record, Once once, SentForm sent, TakePhoto take) {
    this.pages = pages;
    this.record = record;
    this.once = once;
    this.sent = sent;
    this.take = take;
  }

  @GetMapping("/pieces/{id}/inspection")
  String show(
      @PathVariable long id,
      @RequestParam(required = false) @Nullable Outcome outcome,
      ModelMap model) {
    String current = pages.fill(model, id).currentStage();
    model.addAttribute("form", new InspectionForm(outcome, "", current, "", null));
    return "quality/inspection";
  }

  @PostMapping("/pieces/{id}/inspections")
  ModelAndView record(
      @PathVariable long id,
      @ModelAttribute("form") InspectionForm form,
      @RequestParam(required = false) @Nullable MultipartFile photo,
      ModelMap model) {
    try {
      TakenPhoto taken = photo == null || photo.isEmpty() ? null : take.of(photo);
      long unused =
          once.of(sent.ask(), "piece " + id, () -> record.of(id, form.finding(), taken).id());
      return new ModelAndView("redirect:/pieces/" + id);
    } catch (Refused refused) {
      sent.throwIfSentLater(refused);
      if (refused.kind() == Refused.Kind.UNKNOWN) {
        throw refused;
      }
      pages.fill(model, id);
      model.addAttribute("refused", refused.getMessage());
      boolean conflict = refused.kind() == Refused.Kind.CONFLICT;
      return new ModelAndView(
          "quality/inspection",
          model,
          conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
    }
  }
}
