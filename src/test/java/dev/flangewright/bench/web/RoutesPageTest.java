package dev.flangewright.bench.web;

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
import dev.flangewright.bench.BlockNeed;
import dev.flangewright.bench.KeepRoutes;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.Route;
import dev.flangewright.bench.RouteStage;
import dev.flangewright.blocks.BlockKind;
import dev.flangewright.parts.DrawPart;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** The lead and the manager keep the routes of a build. */
@DatabaseTest
class RoutesPageTest {

  private static final String SHRINK = "One shrink flange";

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired KeepRoutes routes;
  AWorkshop workshop;
  String list = "";

  @BeforeEach
  void openTheWorkshop() {
    workshop = AWorkshop.in(context);
    list = "/builds/" + workshop.buildId() + "/routes";
  }

  @Test
  void a_new_build_has_a_route_for_each_nature_and_the_old_address_leads_there() throws Exception {
    workshop.part("TW-F07-S1");
    show(Role.GUEST, list)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Two flanges"),
                        containsString("Heat treated"),
                        containsString("Plain part"),
                        containsString("version 1, released"),
                        containsString("taken by 1 part"),
                        not(containsString("Draft this route")))));
    mvc.perform(get("/builds/" + workshop.buildId() + "/route").with(signedIn(Role.GUEST)))
        .andExpect(redirectedUrl(list));
  }

  @Test
  void a_change_makes_the_next_version_and_pieces_begun_keep_theirs() throws Exception {
    Piece before = workshop.begin(workshop.part("TW-F07-S1"));
    Route draft = draft(SHRINK);
    assertThat(draft.number()).isEqualTo(2);
    String address = "/routes/" + draft.id();

    send(Role.MANAGER, address + "/stages", "name", "Anodise <b>", "kind", "PROTECT", "seen", "0")
        .andExpect(redirectedUrl(address));
    show(Role.MANAGER, address)
        .andExpect(content().string(containsString("Anodise &lt;b&gt;")))
        .andExpect(content().string(containsString("no piece goes by it until it is released")));
    Piece meanwhile = workshop.begin(workshop.part("TW-F07-S2"));
    send(Role.MANAGER, address + "/release", "seen", "1").andExpect(redirectedUrl(address));
    Piece after = workshop.begin(workshop.part("TW-F07-S3"));

    assertThat(meanwhile.stagesTotal()).isEqualTo(before.stagesTotal());
    assertThat(after.stagesTotal()).isEqualTo(before.stagesTotal() + 1);
    assertThat(new Reading(context).first(before.part().id()).stages()).hasSize(10);
    show(Role.GUEST, "/pieces/" + after.id())
        .andExpect(content().string(containsString("One shrink flange, version 2")));
    show(Role.GUEST, "/pieces/" + before.id())
        .andExpect(content().string(containsString("One shrink flange, version 1")));
    send(Role.MANAGER, address + "/stages", "name", "Paint", "kind", "PROTECT", "seen", "1")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("does not change any more")));
  }

  @Test
  void what_was_typed_comes_back_with_the_reason_when_somebody_was_quicker() throws Exception {
    String address = "/routes/" + draft(SHRINK).id();
    send(Role.LEAD, address + "/stages", "name", "Anodise", "kind", "PROTECT", "seen", "0");

    send(Role.MANAGER, address + "/stages", "name", "Paint", "kind", "PROTECT", "seen", "0")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("Somebody changed this route")))
        .andExpect(content().string(containsString("value=\"Paint\"")));
  }

  @Test
  void stages_are_moved_changed_and_removed_but_not_the_inspection() throws Exception {
    Route draft = draft(SHRINK);
    String address = "/routes/" + draft.id();
    change(draft, "cutouts", "/earlier")
        .andExpect(redirectedUrl(address + "#stage-" + stage(draft, "cutouts").id()));
    change(draft, "cutouts", "/remove").andExpect(redirectedUrl(address));
    change(draft, "inspect", "/remove").andExpect(status().isUnprocessableContent());
    change(
            draft,
            "tooling-holes",
            "",
            "name",
            "Pin holes",
            "kind",
            "DRILL",
            "clearance",
            "CUT",
            "expectedMinutes",
            "20",
            "alongside",
            "true",
            "needsBlock",
            "DRILL_TEMPLATE")
        .andExpect(status().is3xxRedirection());
    change(draft, "edges", "", "name", "Edges", "kind", "EDGE", "expectedMinutes", "0")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("expectedMinutes")));

    assertThat(stored(draft).stages())
        .extracting(RouteStage::code)
        .startsWith("lay-out-and-cut", "tooling-holes", "edges")
        .endsWith("inspect", "accepted");
    var card = stage(draft, "tooling-holes").card();
    assertThat(card.name()).isEqualTo("Pin holes");
    assertThat(card.expectedMinutes()).isEqualTo(20);
    assertThat(card.alongside()).isTrue();
    assertThat(card.needsBlock()).isEqualTo("DRILL_TEMPLATE");
    show(Role.LEAD, address)
        .andExpect(content().string(containsString("expected to take 20 min")))
        .andExpect(content().string(containsString("for those cleared to cut")));
  }

  @Test
  void a_stage_names_the_block_it_is_done_on() throws Exception {
    Route draft = draft(SHRINK);
    String[] form = {"name", "Second pass", "kind", "FORM_SHRINK"};
    change(draft, "first-flange", "", with(form, "needsBlock", "ANVIL"))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("needsBlock")));
    change(draft, "first-flange", "", with(form, "needsBlock", "FORM_BLOCK", "blockStage", "10"))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("blockStage must be from 1 to 9")));

    change(draft, "first-flange", "", with(form, "needsBlock", "FORM_BLOCK", "blockStage", "2"));
    show(Role.LEAD, "/routes/" + draft.id())
        .andExpect(content().string(containsString("done on the form block, stage 2")))
        .andExpect(content().string(containsString("Block it is done on")));
    assertThat(stage(draft, "first-flange").card().blockNeed())
        .contains(new BlockNeed(BlockKind.FORM_BLOCK, 2));

    change(draft, "first-flange", "", with(form, "needsBlock", "FORM_BLOCK", "blockStage", ""));
    assertThat(stage(draft, "first-flange").card().blockNeed())
        .as("the first, unless said otherwise")
        .contains(new BlockNeed(BlockKind.FORM_BLOCK, 1));
    change(
        draft, "first-flange", "", with(form, "needsBlock", "DRILL_TEMPLATE", "blockStage", "2"));
    assertThat(stage(draft, "first-flange").card().blockStage()).isNull();
    change(draft, "first-flange", "", with(form, "needsBlock", ""));
    assertThat(stage(draft, "first-flange").card().blockNeed()).isEmpty();
  }

  private static String[] with(String[] some, String... more) {
    return Stream.concat(Stream.of(some), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void checks_are_added_changed_moved_and_removed() throws Exception {
    Route draft = draft(SHRINK);
    String of = "/checks";
    change(draft, "cutouts", of, "question", "No crack", "kind", "YES_NO");
    change(
        draft,
        "cutouts",
        of,
        "question",
        "Width left",
        "kind",
        "NUMBER",
        "unit",
        "mm",
        "nominal",
        "12,5",
        "from",
        "12",
        "to",
        "13");
    show(Role.LEAD, "/routes/" + draft.id())
        .andExpect(content().string(containsString("wanted: 12.5 mm, 12 to 13 mm")))
        .andExpect(content().string(containsString(">a photo</option>")));
    change(draft, "cutouts", of, "question", "Depth", "kind", "NUMBER", "from", "2", "to", "1")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("value=\"Depth\"")));
    long width = checkId(draft, 1);
    change(draft, "cutouts", of + "/" + width + "/earlier");
    change(draft, "cutouts", of + "/" + width, "question", "Rim", "kind", "NUMBER", "from", "12");
    change(draft, "cutouts", of + "/" + checkId(draft, 1) + "/remove");

    assertThat(questions(draft)).containsExactly("Rim");
  }

  @Test
  void a_draft_is_thrown_away_and_nothing_is_left_of_it() throws Exception {
    Route draft = draft(SHRINK);
    assertThat(draft(SHRINK).id()).as("there is one draft of a route").isEqualTo(draft.id());

    send(Role.LEAD, "/routes/" + draft.id() + "/discard", "seen", "0")
        .andExpect(redirectedUrl(list));
    show(Role.LEAD, list).andExpect(content().string(not(containsString("a draft of the next"))));
    mvc.perform(get("/routes/" + draft.id()).with(signedIn(Role.LEAD)))
        .andExpect(status().isNotFound());
    send(Role.LEAD, "/routes/" + named(SHRINK).id() + "/discard", "seen", "0")
        .andExpect(status().isConflict());
  }

  @Test
  void another_route_is_made_released_and_chosen_for_some_parts() throws Exception {
    long part = workshop.part("TW-F07-S1");
    String basedOn = String.valueOf(named(SHRINK).id());
    send(Role.LEAD, list, "name", "Trial", "basedOn", basedOn);
    send(Role.LEAD, list, "name", "Trial", "basedOn", basedOn)
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("already a route named")));
    Route trial = named("Trial");
    send(Role.LEAD, list + "/parts", "parts", "TW-F07-S1", "route", "Trial")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("no released version")));
    change(trial, "cutouts", "/remove");
    send(Role.LEAD, "/routes/" + trial.id() + "/release", "seen", seen(trial));

    send(Role.LEAD, list + "/parts", "parts", "TW-F07-S1, TW-F99", "route", "Trial")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("TW-F99")));
    send(Role.LEAD, list + "/parts", "parts", " TW-F07-S1 ", "route", "Trial")
        .andExpect(redirectedUrl(list));
    Piece piece = workshop.begin(part);

    assertThat(piece.stages()).extracting(PieceStage::code).doesNotContain("cutouts");
    send(Role.LEAD, list + "/parts", "parts", "TW-F07-S1", "route", "")
        .andExpect(redirectedUrl(list));
    show(Role.LEAD, list).andExpect(content().string(containsString("taken by 1 part")));
  }

  @Test
  void a_part_that_nobody_began_leaves_the_register_together_with_the_choice_of_its_route()
      throws Exception {
    long part = workshop.part("TW-F07-S1");
    send(Role.LEAD, list + "/parts", "parts", "TW-F07-S1", "route", "Heat treated");
    long version = context.getBean(Parts.class).findById(part).orElseThrow().version();

    long build =
        AWorkshop.as(Role.LEAD, () -> context.getBean(DrawPart.class).remove(part, version));

    assertThat(build).isEqualTo(workshop.buildId());
    show(Role.LEAD, list).andExpect(content().string(not(containsString("taken by 1 part"))));
  }

  @Test
  void the_usual_route_of_a_nature_is_chosen() throws Exception {
    send(Role.MANAGER, list + "/usual", "nature", "SHRINK_FLANGE", "route", "Heat treated")
        .andExpect(redirectedUrl(list));

    assertThat(workshop.begin(workshop.part("TW-F07-S1")).stages())
        .extracting(PieceStage::code)
        .contains("heat-treat")
        .doesNotContain("second-flange");
  }

  @Test
  void a_route_is_changed_by_nobody_who_only_works_on_it() throws Exception {
    Route draft = draft(SHRINK);
    String address = "/routes/" + draft.id();

    show(Role.FITTER, address).andExpect(content().string(not(containsString("Add the stage"))));
    show(Role.LEAD, address).andExpect(content().string(containsString("Add the stage")));
    for (String act :
        new String[] {"/release", "/discard", "/draft", "/stages", stagePath(draft) + "/checks"}) {
      send(Role.FITTER, address + act, "seen", "0", "name", "X", "question", "X")
          .andExpect(status().isForbidden());
    }
    send(Role.FITTER, list, "name", "Mine", "basedOn", "1").andExpect(status().isForbidden());
    send(Role.FITTER, list + "/parts", "parts", "X", "route", "").andExpect(status().isForbidden());
    send(Role.FITTER, list + "/usual", "nature", "PLAIN", "route", "Plain part")
        .andExpect(status().isForbidden());
  }

  private String stagePath(Route draft) {
    return "/stages/" + stage(draft, "cutouts").id();
  }

  private Route draft(String name) throws Exception {
    send(Role.MANAGER, "/routes/" + named(name).id() + "/draft")
        .andExpect(status().is3xxRedirection());
    return routes.ofBuild(workshop.buildId()).stream()
        .filter(route -> route.isDraft() && route.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The newest version of that name, released first. */
  private Route named(String name) {
    return routes.ofBuild(workshop.buildId()).stream()
        .filter(route -> route.name().equals(name))
        .min(Comparator.comparing(Route::isDraft))
        .orElseThrow();
  }

  private Route stored(Route route) {
    return routes.ofBuild(workshop.buildId()).stream()
        .filter(each -> each.id().equals(route.id()))
        .findFirst()
        .orElseThrow();
  }

  private RouteStage stage(Route route, String code) {
    return stored(route).stages().stream()
        .filter(stage -> stage.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  private String seen(Route route) {
    return String.valueOf(stored(route).changes());
  }

  private ResultActions change(Route route, String code, String act, String... fields)
      throws Exception {
    String[] all = Arrays.copyOf(fields, fields.length + 2);
    all[fields.length] = "seen";
    all[fields.length + 1] = seen(route);
    String address = "/routes/" + route.id() + "/stages/" + stage(route, code).id() + act;
    return send(Role.LEAD, address, all);
  }

  private long checkId(Route route, int place) {
    return new Reading(context).checks(stage(route, "cutouts")).get(place).id();
  }

  private List<String> questions(Route route) {
    return new Reading(context)
        .checks(stage(route, "cutouts")).stream().map(check -> check.card().question()).toList();
  }

  private ResultActions show(Role role, String address) throws Exception {
    return mvc.perform(get(address).with(signedIn(role))).andExpect(status().isOk());
  }

  private ResultActions send(Role role, String address, String... fields) throws Exception {
    var request = post(address).with(signedIn(role)).with(csrf());
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return mvc.perform(request);
  }
}
