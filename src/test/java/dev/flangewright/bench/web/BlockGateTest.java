package dev.flangewright.bench.web;

import static dev.flangewright.bench.AWorkshop.as;
import static dev.flangewright.bench.AWorkshop.signedIn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.Piece;
import dev.flangewright.blocks.BlockAction;
import dev.flangewright.blocks.BlockEntry;
import dev.flangewright.blocks.BlockSetEntry;
import dev.flangewright.blocks.Blocks;
import dev.flangewright.blocks.HandleBlock;
import dev.flangewright.blocks.KeepBlockSets;
import dev.flangewright.blocks.KeepBlocks;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** A piece whose first flange is to be formed on a block of set B7. */
@DatabaseTest
class BlockGateTest {

  private static final String FLANGE = "/stages/first-flange";

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired KeepBlockSets sets;
  @Autowired KeepBlocks keep;
  @Autowired HandleBlock handle;
  private AWorkshop workshop;
  private String piece;

  @BeforeEach
  void bringAPieceToItsFirstFlange() {
    workshop = AWorkshop.in(context);
    Piece begun = workshop.begin(workshop.part("TW-F07-S3L"));
    workshop.bringTo(begun, "first-flange");
    piece = "/pieces/" + begun.id();
  }

  @Test
  void a_stage_does_not_start_before_its_block_is_ready() throws Exception {
    long block = formBlock("1", "TO_MAKE");

    mvc.perform(get(piece).with(signedIn(Role.FITTER)))
        .andExpect(
            content().string(containsString("The form block, stage 1 of B7 is still to make.")))
        .andExpect(content().string(containsString("whoever keeps the blocks")))
        .andExpect(content().string(not(containsString("action=\"" + piece + FLANGE))));
    send(piece + FLANGE + "/start")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("form block, stage 1 of B7 is still to make")));
    tell(piece + FLANGE + "/start", "")
        .andExpect(status().isConflict())
        .andExpect(jsonPath("$.rule").value("BARRED"))
        .andExpect(jsonPath("$.detail", containsString("B7 is still to make")));

    happens(block, BlockAction.MAKE_READY);
    mvc.perform(get(piece).with(signedIn(Role.FITTER)))
        .andExpect(content().string(containsString("action=\"" + piece + FLANGE + "/start\"")));
    send(piece + FLANGE + "/start").andExpect(redirectedUrl(piece));
  }

  @Test
  void a_block_that_nobody_recorded_stands_in_nobodys_way() throws Exception {
    send(piece + FLANGE + "/start").andExpect(redirectedUrl(piece));
    mvc.perform(get(piece).with(signedIn(Role.FITTER)))
        .andExpect(content().string(not(containsString("Block damaged?"))));
    tell(piece + FLANGE + "/finish", "{\"blockDamage\":\"chipped\"}")
        .andExpect(status().isConflict())
        .andExpect(jsonPath("$.detail").value("B7 has no form block that could be damaged."));
    send(piece + FLANGE + "/finish").andExpect(redirectedUrl(piece));
  }

  @Test
  void a_stage_of_the_first_block_does_not_wait_for_the_second() throws Exception {
    long unused = formBlock("2", "TO_MAKE");

    send(piece + FLANGE + "/start").andExpect(redirectedUrl(piece));
  }

  @Test
  void an_entry_that_waited_is_refused_with_the_reason_and_taken_once_the_block_is_ready()
      throws Exception {
    long block = formBlock("1", "TO_MAKE");
    String key = UUID.randomUUID().toString();

    waited(key)
        .andExpect(status().isConflict())
        .andExpect(jsonPath("$.detail", containsString("B7 is still to make")));
    happens(block, BlockAction.MAKE_READY);
    waited(key).andExpect(redirectedUrl(piece));
  }

  @Test
  void damage_told_at_the_finish_keeps_the_next_piece_off_the_block_until_it_is_repaired()
      throws Exception {
    long block = formBlock("1", "READY");
    send(piece + FLANGE + "/start");
    mvc.perform(get(piece).with(signedIn(Role.VOLUNTEER)))
        .andExpect(content().string(containsString("Block damaged?")))
        .andExpect(content().string(containsString("On the form block, stage 1.")));

    send(piece + FLANGE + "/finish", "hours", "two", "blockDamage", "chip <1>")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("<details open")))
        .andExpect(content().string(containsString("value=\"chip &lt;1&gt;\"")));
    send(piece + FLANGE + "/finish", "hours", "2", "blockDamage", "chip <1>")
        .andExpect(redirectedUrl(piece));

    mvc.perform(get(piece).with(signedIn(Role.GUEST)))
        .andExpect(content().string(containsString("form block, stage 1 damaged: chip &lt;1&gt;")));
    Piece next = workshop.begin(workshop.part("TW-F07-S3R"));
    workshop.bringTo(next, "first-flange");
    send("/pieces/" + next.id() + FLANGE + "/start")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("form block, stage 1 of B7 needs repair")));
    mvc.perform(get("/block-sets/" + setOf(block)).with(signedIn(Role.GUEST)))
        .andExpect(content().string(containsString("volunteer: needs repair")))
        .andExpect(content().string(containsString("chip &lt;1&gt; (TW-F07-S3L piece 1)")));
    happens(block, BlockAction.REPAIR);
    send("/pieces/" + next.id() + FLANGE + "/start").andExpect(status().is3xxRedirection());
  }

  @Test
  void damage_told_by_a_program_is_stored_with_the_finish_or_not_at_all() throws Exception {
    long block = formBlock("1", "READY");
    String damage = "{\"blockDamage\":\"split at the lower pin\"}";
    tell(piece + FLANGE + "/finish", damage).andExpect(jsonPath("$.rule").value("NOT_STARTED"));
    tell(piece + FLANGE + "/start", "").andExpect(status().isOk());
    tell(piece + FLANGE + "/finish", "{\"blockDamage\":\"" + "x".repeat(401) + "\"}")
        .andExpect(status().isUnprocessableContent());
    tell(piece + FLANGE + "/finish", damage)
        .andExpect(status().isOk())
        .andExpect(
            jsonPath("$.log[-1].said")
                .value("form block, stage 1 damaged: split at the lower pin"));
    mvc.perform(get("/api/v1/block-sets/" + setOf(block)).with(signedIn(Role.GUEST)))
        .andExpect(jsonPath("$.blocks[0].condition").value("NEEDS_REPAIR"))
        .andExpect(jsonPath("$.blocks[0].log.length()").value(2));

    tell(piece + "/stages/trim-to-working-width/start", "").andExpect(status().isOk());
    tell(piece + "/stages/trim-to-working-width/finish", damage)
        .andExpect(status().isUnprocessableContent())
        .andExpect(jsonPath("$.detail", containsString("needs no block")));
  }

  private long formBlock(String formingStage, String condition) {
    return as(
        Role.FITTER,
        () -> {
          long set = sets.record(workshop.buildId(), BlockSetEntry.named("B7")).id();
          BlockEntry block = new BlockEntry("FORM_BLOCK", formingStage, "", "", condition);
          return keep.add(set, block).id();
        });
  }

  private long setOf(long block) {
    return context.getBean(Blocks.class).findWithSetById(block).orElseThrow().blockSet().id();
  }

  private void happens(long block, BlockAction action) {
    assertThat(as(Role.FITTER, () -> handle.by(block, action, null, "done"))).isNotNull();
  }

  /** As a phone sends what was entered where there was no network. */
  private ResultActions waited(String key) throws Exception {
    return mvc.perform(
        post(piece + FLANGE + "/start")
            .with(signedIn(Role.VOLUNTEER))
            .with(csrf())
            .accept("text/html", "application/problem+json")
            .param("entryKey", key));
  }

  private ResultActions send(String address, String... fields) throws Exception {
    var request = post(address).with(signedIn(Role.VOLUNTEER)).with(csrf());
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return mvc.perform(request);
  }

  private ResultActions tell(String address, String body) throws Exception {
    return mvc.perform(
        post("/api/v1" + address)
            .with(signedIn(Role.VOLUNTEER))
            .contentType(MediaType.APPLICATION_JSON)
            .content(body));
  }
}
