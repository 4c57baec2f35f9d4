package dev.flangewright.api;

import static dev.flangewright.api.BadInputTest.problem;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.nullValue;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.blocks.BlockEntry;
import dev.flangewright.blocks.BlockSetEntry;
import dev.flangewright.blocks.KeepBlockSets;
import dev.flangewright.blocks.KeepBlocks;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;

/** Block sets, read and handled by a program. Every part of the workshop names set B1. */
class BlockSetsApiTest extends ApiTest {

  @Autowired KeepBlockSets sets;
  @Autowired KeepBlocks keep;

  @Test
  void a_set_that_parts_name_is_listed_before_anybody_records_it() throws Exception {
    long build = workshop.buildOf(2);
    read("guest", "/builds/" + build + "/block-sets")
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.length()").value(1))
        .andExpect(jsonPath("$[0].id").value(nullValue()))
        .andExpect(jsonPath("$[0].code").value("B1"))
        .andExpect(jsonPath("$[0].ready").value(false))
        .andExpect(jsonPath("$[0].parts.length()").value(2));
    problem(404, read("guest", "/builds/999999/block-sets"));
    problem(404, read("guest", "/block-sets/999999"));
  }

  @Test
  void a_set_has_its_blocks_and_the_bevels_of_its_parts() throws Exception {
    long build = workshop.buildOf(1);
    long set = record(build);
    long block = addReady(set);
    JsonNode read = body(read("guest", "/block-sets/" + set).andExpect(status().isOk()));
    assertThat(read.at("/blocks/0/id").asLong()).isEqualTo(block);
    assertThat(read.at("/blocks/0/kind").asString()).isEqualTo("FORM_BLOCK");
    assertThat(read.at("/blocks/0/log/0/became").asString()).isEqualTo("READY");
    JsonNode station = read.at("/parts/0/flanges/0/stations/0");
    assertThat(station.get("blockAngleDeg").asDouble())
        .isGreaterThan(station.get("bendAngleDeg").asDouble());
    assertThat(station.get("sawTiltDeg").asDouble())
        .isCloseTo(station.get("blockAngleDeg").asDouble() - 90, within(1e-9));
    read("guest", "/builds/" + build + "/block-sets")
        .andExpect(jsonPath("$[0].id").value(set))
        .andExpect(jsonPath("$[0].ready").value(true))
        .andExpect(jsonPath("$[0].blocks.READY").value(1));
  }

  @Test
  void a_block_is_handled_by_who_may_and_by_who_saw_its_latest_state() throws Exception {
    String condition = "/blocks/" + addReady(record(workshop.buildOf(1))) + "/condition";
    problem(403, send("guest", condition, "{\"action\":\"TAKE\"}"));
    problem(403, send("volunteer", condition, "{\"action\":\"SCRAP\",\"why\":\"split\"}"));
    problem(400, send("fitter", condition, "{}")).andExpect(jsonPath("$.field").value("action"));
    problem(400, send("fitter", condition, "{\"action\":\"EAT\"}"))
        .andExpect(jsonPath("$.allowed.length()").value(6));
    send("volunteer", condition, "{\"action\":\"take\",\"blockVersion\":0}")
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.condition").value("IN_USE"))
        .andExpect(jsonPath("$.blockVersion").value(1))
        .andExpect(jsonPath("$.log[1].who").value("volunteer"));
    problem(409, send("fitter", condition, "{\"action\":\"PUT_BACK\",\"blockVersion\":0}"))
        .andExpect(jsonPath("$.detail", containsString("in the meantime")));
    problem(422, send("fitter", condition, "{\"action\":\"REPORT_DAMAGE\"}"));
    send("fitter", condition, "{\"action\":\"REPORT_DAMAGE\",\"why\":\"chipped\"}")
        .andExpect(jsonPath("$.condition").value("NEEDS_REPAIR"))
        .andExpect(jsonPath("$.log[2].why").value("chipped"));
    problem(409, send("fitter", condition, "{\"action\":\"TAKE\"}"));
    problem(404, send("fitter", "/blocks/999999/condition", "{\"action\":\"TAKE\"}"));
  }

  private long record(long build) {
    long[] id = new long[1];
    SignedIn.as(
        "fitter", Role.FITTER, () -> id[0] = sets.record(build, BlockSetEntry.named("B1")).id());
    return id[0];
  }

  private long addReady(long set) {
    long[] id = new long[1];
    SignedIn.as(
        "fitter",
        Role.FITTER,
        () -> id[0] = keep.add(set, new BlockEntry("FORM_BLOCK", "1", "", "", "READY")).id());
    return id[0];
  }
}
