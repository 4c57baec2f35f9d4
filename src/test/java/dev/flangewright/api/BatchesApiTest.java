package dev.flangewright.api;

import static dev.flangewright.api.BadInputTest.problem;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.nullValue;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.stock.BatchEntry;
import dev.flangewright.stock.KeepBatches;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;

/**
 * Material batches, read and handled by a program. Every part of the workshop is 2024 T3, 1.2 mm.
 */
class BatchesApiTest extends ApiTest {

  @Autowired KeepBatches keep;

  @Test
  void a_batch_is_handled_by_who_may_and_by_who_saw_its_latest_state() throws Exception {
    long build = workshop.buildOf(1);
    long batch = record(build, "B-1");
    String condition = "/batches/" + batch + "/condition";
    read("guest", "/builds/" + build + "/batches")
        .andExpect(status().isOk())
        .andExpect(jsonPath("$[0].mark").value("B-1"))
        .andExpect(jsonPath("$[0].condition").value("RECEIVED"))
        .andExpect(jsonPath("$[0].pieces").value(0));
    problem(404, read("guest", "/builds/999999/batches"));
    problem(404, read("guest", "/batches/999999"));
    problem(403, send("fitter", condition, "{\"action\":\"RELEASE\",\"words\":\"me\"}"));
    problem(403, send("guest", condition, "{\"action\":\"HOLD_BACK\",\"words\":\"me\"}"));
    problem(400, send("inspector", condition, "{}")).andExpect(jsonPath("$.field").value("action"));
    problem(422, send("inspector", condition, "{\"action\":\"RELEASE\"}"));
    send("inspector", condition, "{\"action\":\"release\",\"words\":\"Ivo\",\"batchVersion\":0}")
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.condition").value("RELEASED"))
        .andExpect(jsonPath("$.batchVersion").value(1))
        .andExpect(jsonPath("$.log[1].who").value("inspector"))
        .andExpect(jsonPath("$.log[1].words").value("Ivo"));
    problem(409, send("fitter", condition, "{\"action\":\"USE_UP\",\"batchVersion\":0}"))
        .andExpect(jsonPath("$.detail", containsString("in the meantime")));
  }

  @Test
  void a_cut_names_its_batch_and_an_inspector_puts_it_right() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);
    JsonNode begun = body(send("fitter", "/parts/" + part + "/pieces", ""));
    long piece = begun.get("id").asLong();
    long build = begun.get("buildId").asLong();
    long first = release(build, "B-1");
    long second = release(build, "B-2");
    String cut = "/pieces/" + piece + "/stages/lay-out-and-cut";
    send("fitter", cut + "/start", "").andExpect(status().isOk());
    problem(409, send("fitter", cut + "/finish", "{\"hours\":1}"))
        .andExpect(jsonPath("$.detail", containsString("B-1 (cast 4711), B-2 (cast 4711)")));
    problem(409, send("fitter", cut + "/finish", "{\"batch\":\"B-9\"}"));
    send("fitter", cut + "/finish", "{\"batch\":\"B-1\"}")
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.batch").value("B-1"))
        .andExpect(jsonPath("$.log[1].said").value("cut from batch B-1 (cast 4711)"));
    read("guest", "/batches/" + first).andExpect(jsonPath("$.pieces[0].id").value(piece));
    String right = "{\"batch\":\"B-2\",\"reason\":\"mark on the web\"}";
    problem(403, send("fitter", "/pieces/" + piece + "/batch", right));
    problem(400, send("inspector", "/pieces/" + piece + "/batch", "{\"batch\":\"B-2\"}"));
    send("inspector", "/pieces/" + piece + "/batch", right)
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.batch").value("B-2"))
        .andExpect(jsonPath("$.log[2].action").value("SET_BATCH"));
    read("guest", "/batches/" + first).andExpect(jsonPath("$.pieces.length()").value(0));
    read("guest", "/batches/" + second).andExpect(jsonPath("$.pieces.length()").value(1));
  }

  @Test
  void a_piece_without_a_recorded_batch_says_null() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);
    send("fitter", "/parts/" + part + "/pieces", "")
        .andExpect(jsonPath("$.batch").value(nullValue()))
        .andExpect(jsonPath("$.batchId").value(nullValue()));
  }

  private long release(long build, String mark) throws Exception {
    long batch = record(build, mark);
    send(
            "inspector",
            "/batches/" + batch + "/condition",
            "{\"action\":\"RELEASE\",\"words\":\"Ivo\"}")
        .andExpect(status().isOk());
    return batch;
  }

  private long record(long build, String mark) {
    long[] id = new long[1];
    BatchEntry written =
        new BatchEntry(
            mark, "2024", "T3", "1.2", "4711", "C-1", "", "", "", "", "2026-05-04", "", "");
    SignedIn.as("fitter", Role.FITTER, () -> id[0] = keep.record(build, written).id());
    return id[0];
  }
}
