package dev.flangewright.photos;

import static dev.flangewright.bench.AWorkshop.as;
import static dev.flangewright.bench.AWorkshop.signedIn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.Piece;
import dev.flangewright.blocks.BlockEntry;
import dev.flangewright.blocks.BlockSetEntry;
import dev.flangewright.blocks.KeepBlockSets;
import dev.flangewright.blocks.KeepBlocks;
import dev.flangewright.people.Role;
import dev.flangewright.quality.Inspections;
import dev.flangewright.testing.DatabaseTest;
import dev.flangewright.testing.StatementCount;
import jakarta.persistence.EntityManagerFactory;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** Photos on the pages of pieces, inspections and blocks, and by themselves. */
@DatabaseTest
class PhotoPagesTest {

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired ReadPhotos photos;
  @Autowired KeepPhotos keep;
  @Autowired Inspections inspections;
  @Autowired EntityManagerFactory entities;
  private AWorkshop workshop;
  private Piece piece;
  private String page;

  @BeforeEach
  void beginAPiece() {
    workshop = AWorkshop.in(context);
    piece = workshop.begin(workshop.part("TW-F07-S3L"));
    page = "/pieces/" + piece.id();
  }

  @Test
  void a_photo_stands_on_the_page_of_the_piece_and_in_its_time_line() throws Exception {
    send(Role.VOLUNTEER, page, PhotoFiles.jpeg(900, 600), "burr <b>at</b> station 4")
        .andExpect(redirectedUrl(page));
    Photo photo = only(SubjectKind.PIECE, piece.id());
    show(Role.GUEST, page)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("href=\"/photos/" + photo.id() + "\""),
                        containsString("src=\"/photos/" + photo.id() + "/small\""),
                        containsString("alt=\"burr &lt;b&gt;at&lt;/b&gt; station 4\""),
                        containsString("width=\"400\" height=\"267\""),
                        containsString("volunteer added photo " + photo.id()),
                        not(containsString("Add a photo")))));
    show(Role.FITTER, page)
        .andExpect(content().string(containsString("enctype=\"multipart/form-data\"")))
        .andExpect(content().string(containsString("accept=\"image/jpeg,image/png\"")))
        .andExpect(content().string(containsString("capture=\"environment\"")));
  }

  @Test
  void a_photo_goes_out_as_a_picture_and_nothing_else_to_who_is_signed_in() throws Exception {
    send(Role.FITTER, page, PhotoFiles.jpeg(900, 600), "");
    String address = "/photos/" + only(SubjectKind.PIECE, piece.id()).id();
    for (String size : List.of("", "/small")) {
      var answer =
          show(Role.GUEST, address + size)
              .andExpect(content().contentType("image/jpeg"))
              .andExpect(header().string("X-Content-Type-Options", "nosniff"))
              .andExpect(header().string("Content-Security-Policy", "default-src 'none'; sandbox"))
              .andExpect(header().string("Cache-Control", "max-age=31536000, private, immutable"))
              .andReturn()
              .getResponse();
      assertThat(answer.getContentAsByteArray()).startsWith(0xFF, 0xD8);
      mvc.perform(
              get(address + size)
                  .header("If-None-Match", answer.getHeader("ETag"))
                  .with(signedIn(Role.GUEST)))
          .andExpect(status().isNotModified());
    }
    mvc.perform(get(address)).andExpect(redirectedUrl("/sign-in"));
    mvc.perform(get("/photos/999999").with(signedIn(Role.GUEST))).andExpect(status().isNotFound());
  }

  @Test
  void the_same_photo_sent_again_is_one_photo_of_the_piece() throws Exception {
    byte[] photo = PhotoFiles.jpeg(800, 600);
    send(Role.FITTER, page, photo, "first");
    send(Role.FITTER, page, photo, "again").andExpect(redirectedUrl(page));
    assertThat(only(SubjectKind.PIECE, piece.id()).caption()).isEqualTo("first");
    Piece other = workshop.begin(workshop.part("TW-F07-S3R"));
    send(Role.FITTER, "/pieces/" + other.id(), photo, "of the other").andExpect(status().isFound());
    assertThat(only(SubjectKind.PIECE, other.id()).caption()).isEqualTo("of the other");
  }

  @Test
  void of_eight_phones_that_send_the_same_photo_at_once_one_stores_it() throws Exception {
    TakenPhoto taken = TakePhoto.of(PhotoFiles.jpeg(640, 480));
    Callable<Long> add =
        () -> as(Role.FITTER, () -> keep.add(SubjectKind.PIECE, piece.id(), taken, "")).id();
    ExecutorService phones = Executors.newFixedThreadPool(8);
    try {
      for (Future<Long> id : phones.invokeAll(IntStream.range(0, 8).mapToObj(i -> add).toList())) {
        assertThat(id.get()).isEqualTo(only(SubjectKind.PIECE, piece.id()).id());
      }
    } finally {
      phones.shutdown();
    }
  }

  @Test
  void what_is_no_photo_comes_back_with_the_reason_and_what_was_typed() throws Exception {
    send(Role.FITTER, page, "words".getBytes(StandardCharsets.UTF_8), "edge")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("The file is no JPEG and no PNG")))
        .andExpect(content().string(containsString("value=\"edge\"")));
    send(Role.FITTER, page, new byte[PhotoLimits.MOST_BYTES + 1], "")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("larger than 15 MB")));
    send(Role.FITTER, page, new byte[0], "")
        .andExpect(content().string(containsString("photo is missing")));
    send(Role.FITTER, page, PhotoFiles.jpeg(30, 20), "x".repeat(501))
        .andExpect(content().string(containsString("at most 500 characters")));
    assertThat(photos.of(SubjectKind.PIECE, piece.id())).isEmpty();
  }

  @Test
  void who_may_not_log_work_adds_no_photo_of_a_piece() throws Exception {
    send(Role.GUEST, page, PhotoFiles.jpeg(30, 20), "").andExpect(status().isForbidden());
    send(Role.FITTER, "/pieces/999999", PhotoFiles.jpeg(30, 20), "")
        .andExpect(status().isNotFound());
    send(Role.FITTER, "/builds/" + workshop.buildId(), PhotoFiles.jpeg(30, 20), "")
        .andExpect(status().isNotFound());
    mvc.perform(
            multipart(page + "/photos")
                .file(new MockMultipartFile("photo", PhotoFiles.jpeg(30, 20)))
                .with(signedIn(Role.FITTER)))
        .andExpect(status().isForbidden());
  }

  @Test
  void a_photo_that_is_taken_off_stays_in_the_record_with_the_reason() throws Exception {
    byte[] blurred = PhotoFiles.jpeg(500, 500);
    send(Role.FITTER, page, blurred, "edge");
    long id = only(SubjectKind.PIECE, piece.id()).id();
    takeOff(Role.GUEST, id, "why not").andExpect(status().isForbidden());
    takeOff(Role.FITTER, id, " ")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("reason is missing")));
    takeOff(Role.VOLUNTEER, id, "blurred").andExpect(redirectedUrl(page + "/photos"));
    takeOff(Role.VOLUNTEER, id, "blurred").andExpect(status().isConflict());

    show(Role.GUEST, page)
        .andExpect(content().string(not(containsString("/photos/" + id + "/small"))))
        .andExpect(content().string(containsString("volunteer took photo " + id + " off")));
    show(Role.GUEST, page + "/photos")
        .andExpect(content().string(containsString("taken off by volunteer")))
        .andExpect(content().string(containsString("blurred")));
    show(Role.GUEST, "/photos/" + id).andExpect(content().contentType("image/jpeg"));
    send(Role.FITTER, page, blurred, "edge")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("was taken off by volunteer: blurred")));
  }

  @Test
  void an_inspection_has_the_photo_that_was_taken_with_it_and_later_ones() throws Exception {
    mvc.perform(
            multipart(page + "/inspections")
                .file(new MockMultipartFile("photo", PhotoFiles.jpeg(700, 500)))
                .param("outcome", "SCRAP")
                .param("stage", "lay-out-and-cut")
                .param("cause", "cut-wrong")
                .param("note", "inside the line")
                .with(signedIn(Role.INSPECTOR))
                .with(csrf()))
        .andExpect(redirectedUrl(page));
    long inspection = inspections.findByPieceIdOrderById(piece.id()).get(0).id();
    long photo = only(SubjectKind.INSPECTION, inspection).id();
    for (String where : List.of(page, "/builds/" + workshop.buildId() + "/quality")) {
      show(Role.GUEST, where)
          .andExpect(content().string(containsString("/photos/" + photo + "/small")));
    }
    send(Role.VOLUNTEER, "/inspections/" + inspection, PhotoFiles.jpeg(40, 30), "")
        .andExpect(status().isForbidden());
    send(Role.INSPECTOR, "/inspections/" + inspection, PhotoFiles.jpeg(40, 30), "")
        .andExpect(redirectedUrl(page));
    assertThat(photos.of(SubjectKind.INSPECTION, inspection)).hasSize(2);
  }

  @Test
  void an_inspection_with_a_file_that_is_no_photo_is_not_recorded() throws Exception {
    mvc.perform(
            multipart(page + "/inspections")
                .file(new MockMultipartFile("photo", new byte[] {1, 2, 3}))
                .param("outcome", "REWORK")
                .param("stage", "lay-out-and-cut")
                .param("note", "what was typed")
                .with(signedIn(Role.INSPECTOR))
                .with(csrf()))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("no JPEG and no PNG")))
        .andExpect(content().string(containsString("what was typed")));
    assertThat(inspections.findByPieceIdOrderById(piece.id())).isEmpty();
  }

  @Test
  void a_block_is_photographed_by_who_works_on_it_and_shown_with_its_set() throws Exception {
    long[] set = new long[1];
    long block =
        as(
            Role.LEAD,
            () -> {
              set[0] =
                  context
                      .getBean(KeepBlockSets.class)
                      .record(workshop.buildId(), new BlockSetEntry("B7", "LEFT", "6", "Rack", ""))
                      .id();
              return context
                  .getBean(KeepBlocks.class)
                  .add(set[0], new BlockEntry("FORM_BLOCK", "1", "Beech", "", "READY"))
                  .id();
            });
    send(Role.VOLUNTEER, "/blocks/" + block, PhotoFiles.jpeg(50, 50), "edge crushed")
        .andExpect(redirectedUrl("/block-sets/" + set[0] + "#block-" + block));
    send(Role.GUEST, "/blocks/" + block, PhotoFiles.jpeg(51, 50), "")
        .andExpect(status().isForbidden());
    show(Role.GUEST, "/block-sets/" + set[0])
        .andExpect(content().string(containsString("alt=\"edge crushed\"")));
    show(Role.GUEST, "/blocks/" + block + "/photos")
        .andExpect(content().string(containsString("Photos of B7, form block, stage 1")));
  }

  @Test
  void a_list_of_photos_is_one_statement_however_many_there_are() throws Throwable {
    for (int i = 0; i < 3; i++) {
      send(Role.FITTER, page, PhotoFiles.jpeg(30 + i, 20), "");
    }
    List<Long> ids = List.of(piece.id(), piece.id() + 1, piece.id() + 2);
    assertThat(
            StatementCount.of(
                entities, () -> as(Role.GUEST, () -> photos.galleries(SubjectKind.PIECE, ids))))
        .isEqualTo(1);
  }

  private Photo only(SubjectKind kind, long subjectId) {
    List<Photo> found = photos.of(kind, subjectId);
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private ResultActions show(Role role, String address) throws Exception {
    return mvc.perform(get(address).with(signedIn(role))).andExpect(status().isOk());
  }

  private ResultActions send(Role role, String subject, byte[] photo, String caption)
      throws Exception {
    return mvc.perform(
        multipart(subject + "/photos")
            .file(new MockMultipartFile("photo", "p.jpg", "image/jpeg", photo))
            .param("caption", caption)
            .with(signedIn(role))
            .with(csrf()));
  }

  private ResultActions takeOff(Role role, long id, String reason) throws Exception {
    return mvc.perform(
        post("/photos/" + id + "/take-off")
            .param("reason", reason)
            .with(signedIn(role))
            .with(csrf()));
  }
}
