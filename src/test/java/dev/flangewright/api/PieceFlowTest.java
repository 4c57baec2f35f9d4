package dev.flangewright.api;

import static dev.flangewright.api.BadInputTest.problem;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.nullValue;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.ChooseRoute;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.JsonNode;

/** A piece from its beginning to acceptance or scrap, and what stands in the way. */
class PieceFlowTest extends ApiTest {

  @Autowired ChooseRoute choose;

  @Test
  void a_piece_goes_through_its_route_and_is_accepted() throws Exception {
    long piece = newPiece();
    JsonNode begun = body(read("guest", "/pieces/" + piece));
    List<String> codes =
        begun.get("stages").valueStream().map(s -> s.get("code").asString()).toList();
    assertThat(codes)
        .as("one flange, so no second")
        .startsWith("lay-out-and-cut", "tooling-holes")
        .doesNotContain("second-flange")
        .endsWith("inspect", "accepted");
    for (String code : codes.subList(0, codes.size() - 2)) {
      passStage(piece, code);
    }
    send("inspector", "/pieces/" + piece + "/inspections", "{\"outcome\":\"accept\"}")
        .andExpect(status().isCreated())
        .andExpect(jsonPath("$.pieceState").value("ACCEPTED"))
        .andExpect(jsonPath("$.outcome").value("ACCEPT"));
    read("guest", "/pieces/" + piece)
        .andExpect(jsonPath("$.state").value("ACCEPTED"))
        .andExpect(jsonPath("$.currentStage").value(nullValue()));
    problem(409, send("fitter", "/pieces/" + piece + "/stages/edges/start", ""));
  }

  @Test
  void a_begun_piece_tells_where_it_is_and_blocks_a_second_one() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);
    String address = "/parts/" + part + "/pieces";
    JsonNode first =
        body(
            send("fitter", address, "")
                .andExpect(status().isCreated())
                .andExpect(header().string("Location", containsString("/api/v1/pieces/"))));
    assertThat(first.get("createdBy").asString()).isEqualTo("fitter");
    problem(409, send("fitter", address, ""));
    read("guest", "/parts/" + part)
        .andExpect(jsonPath("$.pieces.length()").value(1))
        .andExpect(jsonPath("$.flanges[0].stations").value(Workshop.STATIONS));
  }

  @Test
  void hours_and_a_note_stand_with_the_name_in_the_log() throws Exception {
    long piece = newPiece();
    String stage = "/pieces/" + piece + "/stages/lay-out-and-cut";
    send("fitter", stage + "/start", "").andExpect(status().isOk());
    send("fitter", stage + "/finish", "{\"hours\":1.5,\"note\":\"second try\"}")
        .andExpect(jsonPath("$.stages[0].hours").value(1.5))
        .andExpect(jsonPath("$.stages[0].state").value("FINISHED"))
        .andExpect(jsonPath("$.log[1].who").value("fitter"))
        .andExpect(jsonPath("$.log[1].note").value("second try"));
    send("fitter", "/pieces/" + piece + "/stages/tooling-holes/start", "");
    problem(
        422, send("fitter", "/pieces/" + piece + "/stages/tooling-holes/finish", "{\"hours\":-1}"));
  }

  @Test
  void stages_are_taken_in_their_order() throws Exception {
    String piece = "/pieces/" + newPiece();
    problem(409, send("fitter", piece + "/stages/first-flange/start", ""))
        .andExpect(jsonPath("$.rule").value("EARLIER_STAGE_OPEN"));
    problem(409, send("fitter", piece + "/stages/lay-out-and-cut/finish", ""))
        .andExpect(jsonPath("$.rule").value("NOT_STARTED"));
    problem(404, send("fitter", piece + "/stages/polish-twice/start", ""));
  }

  @Test
  void a_hold_point_is_passed_only_after_its_check() throws Exception {
    long id = newPiece();
    for (String code : List.of("lay-out-and-cut", "tooling-holes", "cutouts")) {
      passStage(id, code);
    }
    String edges = "/pieces/" + id + "/stages/edges";
    send("fitter", edges + "/start", "").andExpect(jsonPath("$.held").value(true));
    problem(409, send("fitter", edges + "/finish", ""))
        .andExpect(jsonPath("$.rule").value("HOLD_NOT_CHECKED"))
        .andExpect(jsonPath("$.detail", containsString("deburred")));
    problem(403, send("fitter", edges + "/check", ""));
    send("inspector", edges + "/check", "").andExpect(jsonPath("$.held").value(false));
    send("fitter", edges + "/finish", "").andExpect(status().isOk());
  }

  @Test
  void the_check_of_a_heat_treatment_is_answered_before_it_is_finished() throws Exception {
    JsonNode part = body(read("guest", "/parts/" + workshop.partOnACircle(1.2, 3, 500, 20)));
    long build = part.get("buildId").asLong();
    SignedIn.as(
        "lead",
        Role.LEAD,
        () -> choose.forParts(build, List.of(part.get("partNumber").asString()), "Heat treated"));
    long piece =
        body(send("fitter", "/parts/" + part.get("id").asLong() + "/pieces", ""))
            .get("id")
            .asLong();
    for (String code :
        List.of(
            "lay-out-and-cut",
            "tooling-holes",
            "cutouts",
            "edges",
            "first-flange",
            "trim-to-working-width")) {
      passStage(piece, code);
    }
    String treat = "/pieces/" + piece + "/stages/heat-treat";
    String check = treat + "/checks/furnace-chart-kept-with-the-piece";
    problem(409, send("volunteer", treat + "/start", ""))
        .andExpect(jsonPath("$.rule").value("NOT_CLEARED"));
    send("fitter", treat + "/start", "").andExpect(status().isOk());
    problem(409, send("fitter", treat + "/finish", ""))
        .andExpect(jsonPath("$.rule").value("CHECKS_NOT_ANSWERED"));
    problem(422, send("fitter", check, "{\"number\":1}"));
    problem(422, send("fitter", check, "{}"));
    send("fitter", check, "{\"yes\":false}").andExpect(jsonPath("$.held").value(true));
    problem(409, send("fitter", treat + "/finish", ""))
        .andExpect(jsonPath("$.rule").value("CHECK_FAILED"));
    problem(403, send("fitter", check + "/pass", "{\"note\":\"so\"}"));
    problem(422, send("inspector", check + "/pass", "{}"));
    send("inspector", check + "/pass", "{\"note\":\"chart is with the batch\"}")
        .andExpect(jsonPath("$.held").value(false))
        .andExpect(jsonPath("$.route").value("Heat treated, version 1"))
        .andExpect(jsonPath("$.stages[6].checks[0].failed").value(true))
        .andExpect(jsonPath("$.stages[6].checks[0].passedBy").value("inspector"));
    send("fitter", treat + "/finish", "").andExpect(status().isOk());
    problem(
        404,
        send("fitter", "/pieces/" + piece + "/stages/set-to-template/checks/x", "{\"yes\":true}"));
  }

  @Test
  void routes_are_read_with_their_stages() throws Exception {
    long build =
        body(read("guest", "/parts/" + workshop.partOnACircle(1.2, 3, 500, 20)))
            .get("buildId")
            .asLong();
    JsonNode routes = body(read("guest", "/builds/" + build + "/routes"));
    assertThat(routes.valueStream().map(route -> route.get("name").asString()))
        .contains("Two flanges", "Heat treated", "Plain part");
    read("guest", "/routes/" + routes.get(0).get("id").asLong())
        .andExpect(jsonPath("$.state").value("RELEASED"))
        .andExpect(jsonPath("$.stages[3].code").value("edges"));
    problem(404, read("guest", "/routes/987654"));
    problem(404, read("guest", "/builds/987654/routes"));
  }

  @Test
  void a_part_without_another_hand_is_not_begun_as_a_pair() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);
    problem(409, send("fitter", "/parts/" + part + "/pair", ""))
        .andExpect(jsonPath("$.detail", containsString("no twin")));
  }

  @Test
  void the_last_entry_is_taken_back_with_a_reason() throws Exception {
    String piece = "/pieces/" + newPiece();
    send("fitter", piece + "/stages/lay-out-and-cut/start", "");
    problem(400, send("fitter", piece + "/undo", "{}"))
        .andExpect(jsonPath("$.field").value("reason"));
    send("fitter", piece + "/undo", "{\"reason\":\"wrong piece\"}")
        .andExpect(jsonPath("$.stages[0].state").value("NOT_BEGUN"))
        .andExpect(jsonPath("$.log[0].undone").value(true))
        .andExpect(jsonPath("$.log[1].note").value("wrong piece"));
    problem(409, send("fitter", piece + "/undo", "{\"reason\":\"once more\"}"));
  }

  @Test
  void an_entry_on_what_is_no_longer_true_is_refused() throws Exception {
    String piece = "/pieces/" + newPiece();
    long seen = body(read("fitter", piece)).get("pieceVersion").asLong();
    JsonNode started =
        body(
            send(
                "volunteer",
                piece + "/stages/lay-out-and-cut/start",
                "{\"pieceVersion\":" + seen + "}"));
    problem(
            409,
            send(
                "fitter",
                piece + "/stages/lay-out-and-cut/finish",
                "{\"pieceVersion\":" + seen + "}"))
        .andExpect(jsonPath("$.rule").value("SEEN_STALE"))
        .andExpect(jsonPath("$.detail", containsString("volunteer")));
    send(
            "fitter",
            piece + "/stages/lay-out-and-cut/finish",
            "{\"pieceVersion\":" + started.get("pieceVersion").asLong() + "}")
        .andExpect(status().isOk());
  }

  @Test
  void a_scrapped_piece_wants_a_cause_and_makes_room_for_the_next() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);
    JsonNode first = body(send("fitter", "/parts/" + part + "/pieces", ""));
    String inspections = "/pieces/" + first.get("id").asLong() + "/inspections";
    String found = "\"outcome\":\"SCRAP\",\"stage\":\"lay-out-and-cut\",\"note\":\"slip\"";
    problem(422, send("fitter", inspections, "{" + found + "}"));
    problem(422, send("fitter", inspections, "{" + found + ",\"cause\":\"bad-luck\"}"));
    send("fitter", inspections, "{" + found + ",\"cause\":\"cut-wrong\"}")
        .andExpect(status().isCreated())
        .andExpect(jsonPath("$.pieceState").value("SCRAPPED"))
        .andExpect(jsonPath("$.cause").value("cut-wrong"));
    read("guest", "/builds/" + first.get("buildId").asLong() + "/parts")
        .andExpect(jsonPath("$.items[0].state").value("NOT_BEGUN"))
        .andExpect(jsonPath("$.items[0].scrappedPieces").value(1));
    read("fitter", "/builds/" + first.get("buildId").asLong() + "/overview")
        .andExpect(jsonPath("$.parts.total").value(1))
        .andExpect(jsonPath("$.parts.notBegun").value(1))
        .andExpect(jsonPath("$.scrap[0].causeCode").value("cut-wrong"))
        .andExpect(jsonPath("$.scrap[0].pieces").value(1))
        .andExpect(jsonPath("$.next[0].partId").value(part))
        .andExpect(jsonPath("$.next[0].pieceNumber").value(2));
    send("fitter", "/parts/" + part + "/pieces", "").andExpect(jsonPath("$.number").value(2));
  }

  @Test
  void an_outcome_is_one_of_four() throws Exception {
    String inspections = "/pieces/" + newPiece() + "/inspections";
    problem(400, send("lead", inspections, "{\"outcome\":\"MAYBE\"}"))
        .andExpect(jsonPath("$.field").value("outcome"))
        .andExpect(jsonPath("$.allowed.length()").value(4));
    problem(400, send("lead", inspections, "{}")).andExpect(jsonPath("$.field").value("outcome"));
    problem(409, send("lead", inspections, "{\"outcome\":\"ACCEPT\"}"))
        .andExpect(jsonPath("$.rule").value("EARLIER_STAGE_OPEN"));
  }

  @Test
  void each_role_does_its_own_and_no_more() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, 500, 20);
    problem(403, send("guest", "/builds", "{\"name\":\"Not for guests\"}"));
    problem(403, send("fitter", "/builds", "{\"name\":\"Not for fitters\"}"));
    problem(403, send("guest", "/parts/" + part + "/pieces", ""));
    problem(403, send("inspector", "/parts/" + part + "/pieces", ""));
    long piece = body(send("volunteer", "/parts/" + part + "/pieces", "")).get("id").asLong();
    String inspections = "/pieces/" + piece + "/inspections";
    problem(403, send("guest", "/pieces/" + piece + "/stages/lay-out-and-cut/start", ""));
    problem(403, send("volunteer", inspections, "{\"outcome\":\"ACCEPT\"}"));
    problem(403, send("fitter", inspections, "{\"outcome\":\"ACCEPT\"}"));
  }

  @Test
  void the_scrap_causes_are_the_editable_list() throws Exception {
    read("guest", "/scrap-causes")
        .andExpect(jsonPath("$[0].code").value("edge-not-deburred"))
        .andExpect(jsonPath("$[0].prevention").isNotEmpty());
  }
}
