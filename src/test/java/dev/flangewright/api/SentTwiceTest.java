package dev.flangewright.api;

import static dev.flangewright.api.BadInputTest.problem;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.blocks.BlockEntry;
import dev.flangewright.blocks.BlockSetEntry;
import dev.flangewright.blocks.KeepBlockSets;
import dev.flangewright.blocks.KeepBlocks;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.ResultActions;

/** Whatever a phone or a program may send twice is stored once and answered alike. */
class SentTwiceTest extends ApiTest {

  private static final String READING =
      "{\"flange\":\"outer\",\"gauge\":\"MICROMETER\",\"station\":8,\"reading\":%s}";
  private static final String SCRAP =
      "{\"outcome\":\"SCRAP\",\"cause\":\"cut-wrong\",\"stage\":\"lay-out-and-cut\",\"note\":\"%s\"}";

  @Autowired KeepBlockSets sets;
  @Autowired KeepBlocks keep;
  @Autowired JdbcTemplate database;
  private String key;

  @BeforeEach
  void aKey() {
    key = UUID.randomUUID().toString();
  }

  @Test
  void an_inspection() throws Exception {
    long piece = newPiece();
    String inspections = "/pieces/" + piece + "/inspections";

    String first = answered(201, sendWithKey(key, inspections, SCRAP.formatted("slip")));
    assertThat(answered(201, sendWithKey(key, inspections, SCRAP.formatted("slip"))))
        .isEqualTo(first);
    problem(422, sendWithKey(key, inspections, SCRAP.formatted("saw ran off")))
        .andExpect(jsonPath("$.detail", containsString("used for another entry")));

    assertThat(stored("inspection", piece)).isEqualTo(1);
  }

  @Test
  void an_inspection_on_its_page() throws Exception {
    long piece = newPiece();
    String[] scrap = {"outcome", "SCRAP", "cause", "cut-wrong", "stage", "edges", "note", "slip"};

    for (int time = 0; time < 2; time++) {
      form("/pieces/" + piece + "/inspections", scrap).andExpect(status().is3xxRedirection());
    }
    form("/pieces/" + piece + "/inspections", "outcome", "SCRAP", "note", "other")
        .andExpect(status().isUnprocessableContent());

    assertThat(stored("inspection", piece)).isEqualTo(1);
  }

  @Test
  void a_gauge_reading() throws Exception {
    long piece = gaugedPiece();
    String readings = "/pieces/" + piece + "/gauge-readings";

    String first = answered(200, sendWithKey(key, readings, READING.formatted("1.01")));
    assertThat(answered(200, sendWithKey(key, readings, READING.formatted("1.01"))))
        .isEqualTo(first);
    problem(422, sendWithKey(key, readings, READING.formatted("1.02")));
    problem(
        422,
        sendWithKey(key, "/pieces/" + newPiece() + "/gauge-readings", READING.formatted("1.01")));

    assertThat(stored("gauge_reading", piece)).isEqualTo(1);
  }

  @Test
  void a_gauge_reading_on_its_page() throws Exception {
    long piece = gaugedPiece();
    String[] reading = {"flange", "outer", "gauge", "MICROMETER", "station", "8", "reading", "1"};

    for (int time = 0; time < 2; time++) {
      form("/pieces/" + piece + "/gauge", reading)
          .andExpect(redirectedUrlPattern("/pieces/" + piece + "/gauge?entry=*"));
    }

    assertThat(stored("gauge_reading", piece)).isEqualTo(1);
  }

  @Test
  void what_happens_to_a_block() throws Exception {
    String condition = "/blocks/" + readyBlock() + "/condition";
    String damage = "{\"action\":\"REPORT_DAMAGE\",\"why\":\"chipped\"}";

    String first = answered(200, sendWithKey(key, condition, damage));
    assertThat(answered(200, sendWithKey(key, condition, damage))).isEqualTo(first);
    assertThat(json.readTree(first).get("log")).hasSize(2);
    problem(422, sendWithKey(key, condition, "{\"action\":\"REPAIR\",\"why\":\"dressed\"}"));
    problem(422, sendWithKey(key, "/blocks/" + readyBlock() + "/condition", damage));
  }

  @Test
  void what_happens_to_a_block_on_its_page() throws Exception {
    long block = readyBlock();

    for (int time = 0; time < 2; time++) {
      form("/blocks/" + block + "/condition", "action", "REPORT_DAMAGE", "why", "chipped")
          .andExpect(redirectedUrlPattern("/block-sets/*"));
    }

    assertThat(
            database.queryForObject(
                "select count(*) from block_change where block_id = ?", Long.class, block))
        .isEqualTo(2);
  }

  @Test
  void the_beginning_of_a_piece() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);

    String first = answered(201, begin(part));
    assertThat(answered(201, begin(part))).isEqualTo(first);
    problem(422, sendWithKey(key, "/parts/" + part + "/pair", ""));

    assertThat(body(read("guest", "/parts/" + part)).get("pieces")).hasSize(1);
  }

  @Test
  void the_beginning_of_a_piece_on_its_page() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);

    for (int time = 0; time < 2; time++) {
      form("/parts/" + part + "/pieces").andExpect(redirectedUrlPattern("/pieces/*"));
    }

    assertThat(body(read("guest", "/parts/" + part)).get("pieces")).hasSize(1);
  }

  @Test
  void what_is_refused_leaves_its_key_free() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);
    problem(409, sendWithKey(key, "/parts/" + part + "/pair", ""));

    begin(part).andExpect(status().isCreated());
  }

  private long gaugedPiece() throws Exception {
    long part = workshop.partOnACircle(1, 3, 500, 24);
    return body(send("fitter", "/parts/" + part + "/pieces", "")).get("id").asLong();
  }

  private ResultActions begin(long part) throws Exception {
    return sendWithKey(key, "/parts/" + part + "/pieces", "");
  }

  /** The fitter's form as a phone sends it, with the key. */
  private ResultActions form(String address, String... fields) throws Exception {
    var request =
        post(address)
            .with(account("fitter"))
            .with(csrf())
            .accept("text/html", "application/problem+json")
            .param("entryKey", key);
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return mvc.perform(request);
  }

  private static String answered(int status, ResultActions answer) throws Exception {
    return answer.andExpect(status().is(status)).andReturn().getResponse().getContentAsString();
  }

  private @Nullable Long stored(String table, long piece) {
    return database.queryForObject(
        "select count(*) from " + table + " where piece_id = ?", Long.class, piece);
  }

  private long readyBlock() {
    long build = workshop.buildOf(1);
    long[] id = new long[1];
    SignedIn.as(
        "fitter",
        Role.FITTER,
        () -> {
          long set = sets.record(build, BlockSetEntry.named("B1")).id();
          id[0] = keep.add(set, new BlockEntry("FORM_BLOCK", "1", "", "", "READY")).id();
        });
    return id[0];
  }
}
