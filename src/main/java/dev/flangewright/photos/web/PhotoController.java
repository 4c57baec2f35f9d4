package dev.flangewright.photos.web;

import dev.flangewright.people.Refused;
import dev.flangewright.photos.KeepPhotos;
import dev.flangewright.photos.PhotoSize;
import dev.flangewright.photos.PhotoSubject;
import dev.flangewright.photos.PhotoSubjects;
import dev.flangewright.photos.ReadPhotos;
import dev.flangewright.photos.SubjectKind;
import dev.flangewright.photos.TakePhoto;
import dev.flangewright.photos.TakenPhoto;
import dev.flangewright.receipts.Once;
import dev.flangewright.receipts.SentForm;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;

/** The photos of a piece, an inspection or a block, and each photo by itself. */
@Controller
class PhotoController {

  private static final String PAGE = "photos/photos";

  private final PhotoSubjects subjects;
  private final ReadPhotos photos;
  private final KeepPhotos keep;
  private final TakePhoto take;
  private final Once once;
  private final SentForm sent;

  PhotoController(
      PhotoSubjects subjects,
      ReadPhotos photos,
      KeepPhotos keep,
      TakePhoto take,
      Once once,
      SentForm sent) {
    this.subjects = subjects;
    this.photos = photos;
    this.keep = keep;
    this.take = take;
    this.once = once;
    this.sent = sent;
  }

  /** What the layout needs to know of the build. */
  record OfBuild(long id, String name) {}

  @GetMapping("/photos/{id}")
  ResponseEntity<byte[]> full(@PathVariable long id) {
    return PhotoFile.of(photos.photo(id), PhotoSize.FULL, photos.jpeg(id, PhotoSize.FULL));
  }

  @GetMapping("/photos/{id}/small")
  ResponseEntity<byte[]> small(@PathVariable long id) {
    return PhotoFile.of(photos.photo(id), PhotoSize.SMALL, photos.jpeg(id, PhotoSize.SMALL));
  }

  /**
   * @param subject {@code "pieces"}, {@code "inspections"} or {@code "blocks"}
   */
  @GetMapping("/{subject}/{id}/photos")
  ModelAndView page(@PathVariable String subject, @PathVariable long id, ModelMap model) {
    return page(SubjectKind.at(subject), id, model, HttpStatus.OK);
  }

  @PostMapping("/{subject}/{id}/photos")
  ModelAndView add(
      @PathVariable String subject,
      @PathVariable long id,
      @RequestParam MultipartFile photo,
      @RequestParam(defaultValue = "") String caption,
      ModelMap model) {
    SubjectKind kind = SubjectKind.at(subject);
    kind.refuseUnlessOpen(); // before any work is done for it
    try {
      TakenPhoto taken = take.of(photo);
      long unused =
          once.of(sent.ask(), subject + " " + id, () -> keep.add(kind, id, taken, caption).id());
      return new ModelAndView("redirect:" + subjects.of(kind, id).address());
    } catch (Refused refused) {
      model.addAttribute("typedCaption", caption);
      return refused(kind, id, model, refused);
    }
  }

  @PostMapping("/photos/{id}/take-off")
  ModelAndView takeOff(
      @PathVariable long id, @RequestParam(defaultValue = "") String reason, ModelMap model) {
    var photo = photos.photo(id);
    try {
      long subjectId =
          once.of(sent.ask(), "photo " + id, () -> keep.takeOff(id, reason).subjectId());
      String address = photos.gallery(photo.subjectKind(), subjectId).address();
      return new ModelAndView("redirect:" + address);
    } catch (Refused refused) {
      return refused(photo.subjectKind(), photo.subjectId(), model, refused);
    }
  }

  private ModelAndView refused(SubjectKind kind, long id, ModelMap model, Refused refused) {
    sent.throwIfSentLater(refused);
    if (refused.kind() == Refused.Kind.UNKNOWN) {
      throw refused;
    }
    model.addAttribute("refused", refused.getMessage());
    boolean conflict = refused.kind() == Refused.Kind.CONFLICT;
    return page(kind, id, model, conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
  }

  private ModelAndView page(SubjectKind kind, long id, ModelMap model, HttpStatus status) {
    PhotoSubject subject = subjects.of(kind, id);
    model.addAttribute("subject", subject);
    model.addAttribute("build", new OfBuild(subject.buildId(), subject.buildName()));
    model.addAttribute("sheetLabel", subject.label());
    model.addAttribute("gallery", photos.gallery(kind, id));
    return new ModelAndView(PAGE, model, status);
  }
}
