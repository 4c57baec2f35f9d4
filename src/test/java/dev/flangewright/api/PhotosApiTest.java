package dev.flangewright.api;

import static dev.flangewright.api.BadInputTest.problem;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.photos.PhotoFiles;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.ResultActions;
import tools.jackson.databind.JsonNode;

/** Photos added and read by a program. */
class PhotosApiTest extends ApiTest {

  @Test
  void a_photo_is_added_once_listed_read_and_taken_off() throws Exception {
    long piece = newPiece();
    byte[] file = PhotoFiles.jpeg(900, 300);
    JsonNode added =
        body(
            upload("fitter", "/pieces/" + piece, file)
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.caption").value("edge"))
                .andExpect(jsonPath("$.who").value("fitter"))
                .andExpect(jsonPath("$.width").value(900)));
    long id = added.get("id").asLong();
    upload("fitter", "/pieces/" + piece, file).andExpect(jsonPath("$.id").value(id));
    read("guest", "/pieces/" + piece + "/photos")
        .andExpect(jsonPath("$.length()").value(1))
        .andExpect(jsonPath("$[0].sha256").value(added.get("sha256").asString()));
    byte[] small =
        mvc.perform(get("/api/v1/photos/" + id + "/small").with(account("guest")))
            .andExpect(content().contentType("image/jpeg"))
            .andExpect(header().string("Content-Security-Policy", containsString("sandbox")))
            .andReturn()
            .getResponse()
            .getContentAsByteArray();
    assertThat(small).startsWith(0xFF, 0xD8);
    mvc.perform(get("/api/v1/photos/" + id)).andExpect(status().isUnauthorized());

    problem(400, send("fitter", "/photos/" + id + "/take-off", "{}"));
    problem(403, send("guest", "/photos/" + id + "/take-off", "{\"reason\":\"no\"}"));
    send("fitter", "/photos/" + id + "/take-off", "{\"reason\":\"blurred\"}")
        .andExpect(jsonPath("$.takenOffBy").value("fitter"))
        .andExpect(jsonPath("$.takenOffWhy").value("blurred"));
    problem(409, upload("fitter", "/pieces/" + piece, file));
  }

  @Test
  void a_photo_sent_again_with_its_key_is_answered_as_the_first_time() throws Exception {
    long piece = newPiece();
    String key = UUID.randomUUID().toString();
    byte[] file = PhotoFiles.jpeg(910, 300);
    long id = body(withKey(key, piece, file).andExpect(status().isCreated())).get("id").asLong();
    withKey(key, piece, file).andExpect(jsonPath("$.id").value(id));
    send("fitter", "/photos/" + id + "/take-off", "{\"reason\":\"blurred\"}");
    withKey(key, piece, file).andExpect(status().isCreated()).andExpect(jsonPath("$.id").value(id));
    problem(422, withKey(key, piece, PhotoFiles.jpeg(911, 300)));
    read("guest", "/pieces/" + piece + "/photos").andExpect(jsonPath("$.length()").value(1));
  }

  private ResultActions withKey(String key, long piece, byte[] photo) throws Exception {
    return mvc.perform(
        multipart("/api/v1/pieces/" + piece + "/photos")
            .file(new MockMultipartFile("photo", photo))
            .header("Idempotency-Key", key)
            .with(account("fitter")));
  }

  @Test
  void what_cannot_be_added_is_refused_with_a_reason() throws Exception {
    long piece = newPiece();
    problem(422, upload("fitter", "/pieces/" + piece, new byte[] {1, 2, 3}))
        .andExpect(jsonPath("$.detail", containsString("no JPEG and no PNG")));
    problem(403, upload("guest", "/pieces/" + piece, PhotoFiles.jpeg(20, 20)));
    problem(404, upload("fitter", "/pieces/999999", PhotoFiles.jpeg(20, 20)));
    problem(404, upload("fitter", "/frames/1", PhotoFiles.jpeg(20, 20)));
    problem(404, read("guest", "/pieces/999999/photos"));
    problem(404, read("guest", "/photos/999999"));
    problem(
        400, mvc.perform(multipart("/api/v1/pieces/" + piece + "/photos").with(account("fitter"))));
  }

  private ResultActions upload(String who, String subject, byte[] photo) throws Exception {
    return mvc.perform(
        multipart("/api/v1" + subject + "/photos")
            .file(new MockMultipartFile("photo", "p.jpg", "image/jpeg", photo))
            .param("caption", "edge")
            .with(account(who)));
  }
}
