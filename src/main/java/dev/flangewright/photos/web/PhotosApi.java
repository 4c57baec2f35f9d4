package dev.flangewright.photos.web;

import dev.flangewright.photos.KeepPhotos;
import dev.flangewright.photos.PhotoSize;
import dev.flangewright.photos.PhotoSubjects;
import dev.flangewright.photos.ReadPhotos;
import dev.flangewright.photos.SubjectKind;
import dev.flangewright.photos.TakePhoto;
import dev.flangewright.photos.TakenPhoto;
import dev.flangewright.receipts.Ask;
import dev.flangewright.receipts.EntryKey;
import dev.flangewright.receipts.Once;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/** Photos over HTTP. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Photos")
class PhotosApi {

  private static final String SUBJECT = "What is photographed.";

  private final PhotoSubjects subjects;
  private final ReadPhotos photos;
  private final KeepPhotos keep;
  private final TakePhoto take;
  private final Once once;

  PhotosApi(PhotoSubjects subjects, ReadPhotos photos, KeepPhotos keep, TakePhoto take, Once once) {
    this.subjects = subjects;
    this.photos = photos;
    this.keep = keep;
    this.take = take;
    this.once = once;
  }

  @GetMapping("/{subject}/{id}/photos")
  @Operation(
      summary = "List the photos of a piece, an inspection or a block",
      description = "Oldest first, those taken off included.")
  List<PhotoAnswer> list(
      @Parameter(
              description = SUBJECT,
              schema = @Schema(allowableValues = {"pieces", "inspections", "blocks"}))
          @PathVariable
          String subject,
      @PathVariable long id) {
    SubjectKind kind = SubjectKind.at(subject);
    subjects.refuseUnlessKnown(kind, id);
    return photos.of(kind, id).stream().map(PhotoAnswer::of).toList();
  }

  @PostMapping(path = "/{subject}/{id}/photos", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
  @ResponseStatus(HttpStatus.CREATED)
  @Operation(
      summary = "Add a photo",
      description =
          "A JPEG or PNG of up to 15 MB and 80 megapixels. It is turned upright, made smaller and"
              + " written anew; nothing but the picture is kept. The same file sent again is the"
              + " same photo, so it is safe to repeat. Of a piece it needs an account that logs work"
              + " or releases holds; of an inspection one that inspects or scraps; of a block one"
              + " that keeps the blocks or logs work.")
  PhotoAnswer add(
      @Parameter(
              description = SUBJECT,
              schema = @Schema(allowableValues = {"pieces", "inspections", "blocks"}))
          @PathVariable
          String subject,
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @RequestParam MultipartFile photo,
      @RequestParam(defaultValue = "") String caption) {
    SubjectKind kind = SubjectKind.at(subject);
    kind.refuseUnlessOpen(); // before any work is done for it
    TakenPhoto taken = take.of(photo);
    Ask ask = new Ask(key, null, "photo %s, caption %s".formatted(taken.sha256(), caption));
    return PhotoAnswer.of(
        photos.photo(
            once.of(ask, subject + " " + id, () -> keep.add(kind, id, taken, caption).id())));
  }

  @GetMapping(path = "/photos/{id}", produces = MediaType.IMAGE_JPEG_VALUE)
  @Operation(summary = "Read a picture", description = "At most 2048 pixels a side.")
  ResponseEntity<byte[]> full(@PathVariable long id) {
    return PhotoFile.of(photos.photo(id), PhotoSize.FULL, photos.jpeg(id, PhotoSize.FULL));
  }

  @GetMapping(path = "/photos/{id}/small", produces = MediaType.IMAGE_JPEG_VALUE)
  @Operation(summary = "Read a picture, small", description = "At most 400 pixels a side.")
  ResponseEntity<byte[]> small(@PathVariable long id) {
    return PhotoFile.of(photos.photo(id), PhotoSize.SMALL, photos.jpeg(id, PhotoSize.SMALL));
  }

  @PostMapping("/photos/{id}/take-off")
  @Operation(
      summary = "Take a photo off",
      description = "It stays in the record with the reason. Needs what adding one needs.")
  PhotoAnswer takeOff(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @Valid @RequestBody TakeOffRequest request) {
    Ask ask = new Ask(key, null, "take off, " + request.reason());
    return PhotoAnswer.of(
        photos.photo(once.of(ask, "photo " + id, () -> keep.takeOff(id, request.reason()).id())));
  }
}
