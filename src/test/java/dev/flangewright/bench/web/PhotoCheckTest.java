package dev.flangewright.bench.web;

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
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.CheckCard;
import dev.flangewright.bench.CheckKind;
import dev.flangewright.bench.EditRoute;
import dev.flangewright.bench.KeepRoutes;
import dev.flangewright.bench.Route;
import dev.flangewright.people.Role;
import dev.flangewright.photos.Photo;
import dev.flangewright.photos.PhotoFiles;
import dev.flangewright.photos.ReadPhotos;
import dev.flangewright.photos.SubjectKind;
import dev.flangewright.testing.DatabaseTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** A check that a route wants answered by a photo. */
@DatabaseTest
class PhotoCheckTest {

  private static final String CUT = "/stages/lay-out-and-cut";
  private static final String CHECK = CUT + "/checks/grain-marked-on-the-blank";

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired KeepRoutes routes;
  @Autowired EditRoute edit;
  @Autowired ReadPhotos photos;
  private AWorkshop workshop;
  private long id;
  private String piece;

  @BeforeEach
  void beginAPieceWhoseFirstStageAsksForAPhoto() {
    workshop = AWorkshop.in(context);
    Route route =
        routes.ofBuild(workshop.buildId()).stream()
            .filter(each -> each.name().equals("One shrink flange"))
            .findFirst()
            .orElseThrow();
    AWorkshop.as(
        Role.LEAD,
        () -> {
          Route draft = routes.draftNext(route.id());
          edit.ask(
              draft.id(),
              0,
              draft.stages().get(0).id(),
              new CheckCard("Grain marked on the blank", CheckKind.PHOTO, "", null, null, null));
          routes.release(draft.id(), 1);
          return draft;
        });
    id = workshop.begin(workshop.part("TW-F07-S1")).id();
    piece = "/pieces/" + id;
  }

  @Test
  void the_stage_is_finished_once_the_photo_is_there_and_the_log_says_which() throws Exception {
    send(Role.FITTER, piece + CUT + "/start");
    show(Role.FITTER)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Answer with this photo"),
                        containsString("Grain marked on the blank"),
                        not(containsString("name=\"check.grain-marked-on-the-blank\"")))));
    send(Role.FITTER, piece + CUT + "/finish")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("Missing: Grain marked on the blank")));

    answer(Role.FITTER, PhotoFiles.jpeg(320, 240)).andExpect(redirectedUrl(piece));

    Photo photo = photos.of(SubjectKind.PIECE, id).get(0);
    assertThat(photo.caption()).isEqualTo("Grain marked on the blank");
    show(Role.FITTER)
        .andExpect(content().string(containsString(">photo " + photo.id() + "</a>")))
        .andExpect(content().string(not(containsString("Answer with this photo"))));
    send(Role.FITTER, piece + CUT + "/finish").andExpect(redirectedUrl(piece));
    show(Role.GUEST)
        .andExpect(
            content().string(containsString("Grain marked on the blank: photo " + photo.id())));
  }

  @Test
  void taken_back_the_answer_is_missing_again_and_the_photo_stays() throws Exception {
    send(Role.FITTER, piece + CUT + "/start");
    answer(Role.FITTER, PhotoFiles.jpeg(322, 240));
    mvc.perform(
            post(piece + "/undo")
                .param("reason", "wrong blank")
                .with(signedIn(Role.FITTER))
                .with(csrf()))
        .andExpect(redirectedUrl(piece));
    send(Role.FITTER, piece + CUT + "/finish").andExpect(status().isConflict());
    assertThat(photos.of(SubjectKind.PIECE, id)).hasSize(1);
  }

  @Test
  void if_the_answer_is_refused_its_photo_is_not_kept_either() throws Exception {
    answer(Role.FITTER, PhotoFiles.jpeg(323, 240))
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("has not been started")));
    send(Role.FITTER, piece + CUT + "/start");
    answer(Role.FITTER, new byte[] {1, 2, 3})
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("no JPEG and no PNG")));
    answer(Role.GUEST, PhotoFiles.jpeg(323, 240)).andExpect(status().isForbidden());
    assertThat(photos.of(SubjectKind.PIECE, id)).isEmpty();
  }

  @Test
  void neither_a_yes_nor_a_photo_of_another_piece_answers_it() throws Exception {
    send(Role.FITTER, piece + CUT + "/start");
    api("{\"yes\":true}").andExpect(status().isUnprocessableContent());
    long other = workshop.begin(workshop.part("TW-F07-S2")).id();
    upload("/pieces/" + other + "/photos", PhotoFiles.jpeg(325, 240));
    long foreign = photos.of(SubjectKind.PIECE, other).get(0).id();
    api("{\"photo\":" + foreign + "}").andExpect(status().isUnprocessableContent());
    upload(piece + "/photos", PhotoFiles.jpeg(326, 240));
    long own = photos.of(SubjectKind.PIECE, id).get(0).id();
    api("{\"photo\":" + own + "}").andExpect(status().isOk());
    send(Role.FITTER, piece + CUT + "/finish").andExpect(redirectedUrl(piece));
  }

  private ResultActions api(String body) throws Exception {
    return mvc.perform(
        post("/api/v1" + piece + CHECK)
            .with(signedIn(Role.FITTER))
            .contentType(MediaType.APPLICATION_JSON)
            .content(body));
  }

  private void upload(String address, byte[] photo) throws Exception {
    mvc.perform(
            multipart(address)
                .file(new MockMultipartFile("photo", photo))
                .with(signedIn(Role.FITTER))
                .with(csrf()))
        .andExpect(status().isFound());
  }

  private ResultActions answer(Role role, byte[] photo) throws Exception {
    return mvc.perform(
        multipart(piece + CHECK + "/photo")
            .file(new MockMultipartFile("photo", "p.jpg", "image/jpeg", photo))
            .with(signedIn(role))
            .with(csrf()));
  }

  private ResultActions show(Role role) throws Exception {
    return mvc.perform(get(piece).with(signedIn(role))).andExpect(status().isOk());
  }

  private ResultActions send(Role role, String address) throws Exception {
    return mvc.perform(post(address).with(signedIn(role)).with(csrf()));
  }
}
