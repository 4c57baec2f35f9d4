package dev.flangewright.bench.web;

import dev.flangewright.bench.AnswerWithPhoto;
import dev.flangewright.people.Refused;
import dev.flangewright.photos.SubjectKind;
import dev.flangewright.photos.TakePhoto;
import dev.flangewright.photos.TakenPhoto;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;

/** Answers a check with a photo, on the page of the piece. */
@Controller
class PhotoCheckController {

  private final PiecePages pages;
  private final AnswerWithPhoto answer;
  private final TakePhoto take;
  private final EntryDoor door;

  PhotoCheckController(PiecePages pages, AnswerWithPhoto answer, TakePhoto take, EntryDoor door) {
    this.pages = pages;
    this.answer = answer;
    this.take = take;
    this.door = door;
  }

  @PostMapping("/pieces/{id}/stages/{code}/checks/{check}/photo")
  ModelAndView answer(
      @PathVariable long id,
      @PathVariable String code,
      @PathVariable String check,
      @RequestParam MultipartFile photo,
      @ModelAttribute("form") EntryForm form,
      ModelMap model) {
    SubjectKind.PIECE.refuseUnlessOpen(); // before any work is done for it
    try {
      TakenPhoto taken = take.of(photo);
      door.through(id, () -> answer.of(id, code, check, taken, form.seen(), form.note()));
      return new ModelAndView("redirect:/pieces/" + id);
    } catch (Refused refused) {
      door.throwIfSentLater(refused);
      RefusedPage.throwIfUnknown(refused);
      pages.fill(model, id, code);
      return RefusedPage.of("bench/piece", model, refused);
    }
  }
}
