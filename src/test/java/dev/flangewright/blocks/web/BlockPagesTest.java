package dev.flangewright.blocks.web;

import static dev.flangewright.bench.AWorkshop.signedIn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.blocks.Block;
import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.blocks.BlockLine;
import dev.flangewright.blocks.BlockSet;
import dev.flangewright.blocks.BlockSets;
import dev.flangewright.blocks.Blocks;
import dev.flangewright.parts.FigurePart;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartFigures;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.transaction.support.TransactionTemplate;

/** Every part of the workshop names block set B7. */
@DatabaseTest
class BlockPagesTest {

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired BlockSets sets;
  @Autowired Blocks blocks;
  @Autowired Parts parts;
  @Autowired FigurePart figure;
  @Autowired TransactionTemplate transaction;
  private AWorkshop workshop;
  private long part;

  @BeforeEach
  void openTheWorkshop() {
    workshop = AWorkshop.in(context);
    part = workshop.part("TW-F07-S3L");
  }

  @Test
  void a_code_that_a_part_names_is_not_recorded_yet_until_somebody_records_it() throws Exception {
    String list = "/builds/" + workshop.buildId() + "/blocks";
    page(Role.FITTER, list, "B7", "not recorded yet", "Record it", "TW-F07-S3L", "0 of 1 sets");
    mvc.perform(get(list).with(signedIn(Role.GUEST)))
        .andExpect(content().string(not(containsString("Record it"))));
    page(Role.FITTER, "/parts/" + part, "which is not recorded yet", "Record this block set");
    page(Role.FITTER, list + "/new?code=B7", "value=\"B7\"");

    BlockSet set = recordB7();

    page(Role.GUEST, list, "/block-sets/" + set.id(), "not recorded yet", "Rack A");
    addBlock(set, "FORM_BLOCK", "1", "TO_MAKE");
    page(Role.GUEST, list, "1 to make", "0 of 1 sets is ready; 1 with a block to make.");
    page(
        Role.GUEST,
        "/parts/" + part,
        "/block-sets/" + set.id(),
        "The form block, stage 1 of B7 is still to make.");
  }

  @Test
  void a_set_is_recorded_once_with_what_can_be_true_of_it() throws Exception {
    String form = "/builds/" + workshop.buildId() + "/blocks/new";
    send(Role.VOLUNTEER, form, "code", "B7").andExpect(status().isForbidden());
    send(Role.MANAGER, form, "code", "B7").andExpect(status().isForbidden());
    send(Role.LEAD, form, "code", "", "pinMm", "six", "hand", "UP")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("it must not be empty")))
        .andExpect(content().string(containsString("from 1 to 50")))
        .andExpect(content().string(containsString("left, right or reversible")))
        .andExpect(content().string(containsString("value=\"six\"")));
    BlockSet set = recordB7();
    send(Role.LEAD, form, "code", "B7")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("already a block set")));

    String edit = "/block-sets/" + set.id() + "/edit";
    page(Role.FITTER, edit, "value=\"6.35\"", "Rack A");
    send(Role.FITTER, edit, "version", "0", "pinMm", "8", "place", "Rack <b>C</b>")
        .andExpect(redirectedUrl("/block-sets/" + set.id()));
    send(Role.FITTER, edit, "version", "0", "pinMm", "9").andExpect(status().isConflict());
    page(Role.GUEST, "/block-sets/" + set.id(), "Rack &lt;b&gt;C", ">8<");
  }

  @Test
  void a_block_is_made_taken_damaged_and_repaired_by_who_may() throws Exception {
    BlockSet set = recordB7();
    Block block = addBlock(set, "FORM_BLOCK", "1", "TO_MAKE");
    page(Role.GUEST, "/block-sets/" + set.id(), "No. The form block, stage 1 of B7 is still");

    happens(Role.VOLUNTEER, block, "MAKE_READY", "").andExpect(status().isForbidden());
    happens(Role.FITTER, block, "MAKE_READY", "")
        .andExpect(redirectedUrl("/block-sets/" + set.id() + "#block-" + block.id()));
    page(Role.GUEST, "/block-sets/" + set.id(), "Yes, every block recorded here is fit for work.");
    happens(Role.VOLUNTEER, block, "TAKE", "").andExpect(status().is3xxRedirection());
    happens(Role.VOLUNTEER, block, "REPORT_DAMAGE", " ")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("why is missing")));
    happens(Role.GUEST, block, "REPORT_DAMAGE", "chipped").andExpect(status().isForbidden());
    happens(Role.VOLUNTEER, block, "REPORT_DAMAGE", "<i>chipped</i>");
    assertThat(condition(block)).isEqualTo(BlockCondition.NEEDS_REPAIR);
    page(Role.GUEST, "/block-sets/" + set.id(), "&lt;i&gt;chipped", "volunteer: needs repair");
    happens(Role.VOLUNTEER, block, "REPAIR", "let in").andExpect(status().isForbidden());
    happens(Role.FITTER, block, "REPAIR", "let in").andExpect(status().is3xxRedirection());
    happens(Role.LEAD, block, "SCRAP", "split").andExpect(status().is3xxRedirection());
    happens(Role.LEAD, block, "TAKE", "")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("cannot be taken: it is scrapped")));
  }

  @Test
  void only_what_may_be_done_now_by_the_reader_is_offered() throws Exception {
    BlockSet set = recordB7();
    addBlock(set, "BACKING_BLOCK", "", "READY");
    String address = "/block-sets/" + set.id();
    page(Role.VOLUNTEER, address, "Take it to the bench", "Report damage");
    mvc.perform(get(address).with(signedIn(Role.VOLUNTEER)))
        .andExpect(
            content()
                .string(
                    not(allOf(containsString("Scrap this block"), containsString("Put it back")))));
    page(Role.FITTER, address, "Scrap this block", "Add a block", "Change the set");
    mvc.perform(get(address).with(signedIn(Role.GUEST)))
        .andExpect(content().string(not(containsString("/condition"))));
  }

  @Test
  void who_looked_at_an_older_state_is_told_and_keeps_what_was_typed() throws Exception {
    BlockSet set = recordB7();
    Block block = addBlock(set, "FORM_BLOCK", "2", "READY");
    happens(Role.VOLUNTEER, block, "TAKE", "");
    String address = "/blocks/" + block.id() + "/condition";
    send(Role.FITTER, address, "action", "SCRAP", "why", "worn round", "seen", "0")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("Somebody changed this block")))
        .andExpect(content().string(containsString("value=\"worn round\"")));
    assertThat(condition(block)).isEqualTo(BlockCondition.IN_USE);
    send(Role.FITTER, address, "action", "JUMP").andExpect(status().isBadRequest());
    send(Role.FITTER, address, "why", "x").andExpect(status().isUnprocessableContent());
    send(Role.FITTER, "/blocks/999999/condition", "action", "TAKE")
        .andExpect(status().isNotFound());
  }

  @Test
  void a_block_is_described_anew_and_a_template_has_no_stage() throws Exception {
    BlockSet set = recordB7();
    Block block = addBlock(set, "FORM_BLOCK", "1", "READY");
    String edit = "/blocks/" + block.id() + "/edit";
    page(Role.FITTER, edit, "What is this block of B7?");
    send(Role.FITTER, edit, "version", "0", "kind", "DRILL_TEMPLATE", "material", "Steel")
        .andExpect(redirectedUrl("/block-sets/" + set.id() + "#block-" + block.id()));
    page(Role.GUEST, "/block-sets/" + set.id(), "Drill template", "Steel");
    send(Role.FITTER, edit, "version", "0", "kind", "DRILL_TEMPLATE")
        .andExpect(status().isConflict());
    send(Role.FITTER, edit, "version", "1", "kind", "FORM_BLOCK", "formingStage", "0")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("a whole number from 1 to 9")));
    String add = "/block-sets/" + set.id() + "/blocks/new";
    page(Role.FITTER, add, "Which block belongs to B7?");
    send(Role.FITTER, add, "kind", "SHELF", "formingStage", "1", "condition", "IN_USE")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("one of the kinds")))
        .andExpect(content().string(containsString("TO_MAKE or READY")));
    send(Role.MANAGER, add, "kind", "FORM_BLOCK").andExpect(status().isForbidden());
  }

  @Test
  void the_bevel_table_gives_block_angle_and_tilt_of_each_station() throws Exception {
    BlockSet set = recordB7();
    workshop.part("TW-F07-S3R");
    double block =
        transaction.execute(
            status -> {
              Part drawn = parts.whole(part).orElseThrow();
              PartFigures figures = figure.of(drawn);
              return figures.flanges().get(0).working().stations().get(0).blockAngleDeg();
            });
    assertThat(block).isGreaterThan(90);
    page(
        Role.GUEST,
        "/block-sets/" + set.id(),
        "The outer flange of TW-F07-S3L, TW-F07-S3R, shrink",
        String.format(Locale.ROOT, ">%.1f°<", block),
        String.format(Locale.ROOT, ">%.1f° leans under<", block - 90),
        "Proof stress by ",
        "Young&#39;s modulus by ",
        "prove it on a trial piece");
  }

  @Test
  void the_list_is_filtered_by_condition() throws Exception {
    BlockSet set = recordB7();
    addBlock(set, "FORM_BLOCK", "1", "READY");
    addBlock(set, "FORM_BLOCK", "2", "TO_MAKE");
    String list = "/builds/" + workshop.buildId() + "/blocks?show=";
    page(Role.GUEST, list + "TO_MAKE", "1 ready", "1 to make", "1 set");
    page(Role.GUEST, list + "READY", "0 of 1 sets");
    page(Role.GUEST, list + "NEEDS_REPAIR", "0 of 1 sets");
    mvc.perform(get(list + "SHINY").with(signedIn(Role.GUEST))).andExpect(status().isBadRequest());
    mvc.perform(get("/builds/999999/blocks").with(signedIn(Role.GUEST)))
        .andExpect(status().isNotFound());
  }

  private BlockSet recordB7() throws Exception {
    send(
            Role.FITTER,
            "/builds/" + workshop.buildId() + "/blocks/new",
            "code",
            "B7",
            "pinMm",
            "6.35",
            "place",
            "Rack A",
            "hand",
            "REVERSIBLE")
        .andExpect(status().is3xxRedirection());
    return sets.findByBuildIdAndCode(workshop.buildId(), "B7").orElseThrow();
  }

  private Block addBlock(BlockSet set, String kind, String stage, String condition)
      throws Exception {
    send(
            Role.FITTER,
            "/block-sets/" + set.id() + "/blocks/new",
            "kind",
            kind,
            "formingStage",
            stage,
            "condition",
            condition)
        .andExpect(status().is3xxRedirection());
    List<BlockLine> lines = blocks.ofBuild(workshop.buildId());
    return blocks.findById(lines.get(lines.size() - 1).id()).orElseThrow();
  }

  private ResultActions happens(Role role, Block block, String action, String why)
      throws Exception {
    return send(role, "/blocks/" + block.id() + "/condition", "action", action, "why", why);
  }

  private BlockCondition condition(Block block) {
    return blocks.findById(block.id()).orElseThrow().condition();
  }

  private void page(Role role, String address, String... words) throws Exception {
    ResultActions page = mvc.perform(get(address).with(signedIn(role))).andExpect(status().isOk());
    for (String one : words) {
      page.andExpect(content().string(containsString(one)));
    }
  }

  private ResultActions send(Role role, String address, String... fields) throws Exception {
    var request = post(address).with(signedIn(role)).with(csrf());
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return mvc.perform(request);
  }
}
