package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.testing.TestDatabase;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * A workshop's database from before routes had versions: one build with a route of its own, a piece
 * half way through it, and two accounts. It is filled once and brought up to date.
 */
@Tag("database")
class RoutesMigrationTest {

  private static final String STAGES =
      "select s.seq, s.code, s.name, s.kind, s.hold_check, s.flanges_needed, s.clearance,"
          + " s.needs_block from route_stage s join route r on r.id = s.route_id"
          + " where r.name = :name order by s.seq";

  private static @Nullable JdbcClient stored;

  private static JdbcClient database() {
    return Objects.requireNonNull(stored);
  }

  @BeforeAll
  static void bringAnOldDatabaseUpToDate() {
    DataSource source = TestDatabase.fresh();
    Flyway.configure().dataSource(source).target("3").load().migrate();
    stored = JdbcClient.create(source);
    fill();
    Flyway.configure().dataSource(source).load().migrate();
  }

  private static void fill() {
    String now = "timestamp with time zone '2026-06-02 12:00:00+00:00'";
    run("insert into account values (1, 0, 'ann', 'FITTER', 'x', true, " + now + ")");
    run("insert into account values (2, 0, 'ivo', 'INSPECTOR', 'x', true, " + now + ")");
    run("insert into build values (1, 0, 'Hull', '', '', '', " + now + ")");
    run("insert into frame values (1, 0, 1, 'F7', '2100')");
    run(
        "insert into part (id, version, build_id, frame_id, part_number, segment, hand, drawing,"
            + " drawing_issue, alloy, temper, thickness, inside_bend_radius_mm, block_set,"
            + " figures_version) values (1, 0, 1, 1, 'P-1', 'S1', 'LEFT', 'D', 'A', '2024', 'O',"
            + " '1.2', '3', '', 0)");
    flange(1, "inner", "STRETCH", 0);
    flange(2, "outer", "SHRINK", 1);
    routeStage(1, "lay-out-and-cut", "CUT", null);
    routeStage(2, "edges", "EDGE", "Edges smooth");
    routeStage(3, "first-flange", "FORM", null);
    routeStage(4, "second-flange", "FORM", null);
    routeStage(5, "inspect", "INSPECT", null);
    routeStage(6, "accepted", "ACCEPT", null);
    run(
        "insert into piece values (1, 0, 1, 1, 1, 'IN_WORK', 1, 6, 'edges', 'Edges', false, false, "
            + now
            + ", 'ann')");
    pieceStage(1, "lay-out-and-cut", "CUT");
    pieceStage(2, "edges", "EDGE");
    pieceStage(3, "first-flange", "FORM");
    pieceStage(4, "second-flange", "FORM");
    pieceStage(5, "inspect", "INSPECT");
    pieceStage(6, "accepted", "ACCEPT");
    run("update piece_stage set started_at = " + now + ", started_by = 'ann' where seq = 1");
    run("update piece_stage set finished_at = " + now + ", finished_by = 'ann' where seq = 1");
    entry(1, "START", now);
    entry(2, "FINISH", now);
  }

  private static void flange(int id, String name, String kind, int order) {
    run(
        "insert into flange (id, version, part_id, name, kind, finished_width_mm,"
            + " working_width_mm, edge_condition, register_order, contour_order, stations, sketch)"
            + " values (%d, 0, 1, '%s', '%s', '18', '22', 'POLISHED', %d, 0, '', '')"
                .formatted(id, name, kind, order));
  }

  private static void routeStage(int seq, String code, String kind, @Nullable String hold) {
    run(
        "insert into route_stage values (%d, 0, 1, %d, '%s', 'Our %s', '%s', %s, 0)"
            .formatted(seq, seq, code, code, kind, hold == null ? "null" : "'" + hold + "'"));
  }

  private static void pieceStage(int seq, String code, String kind) {
    run(
        "insert into piece_stage (id, version, piece_id, seq, code, name, kind)"
            + " values (%d, 0, 1, %d, '%s', 'Our %s', '%s')".formatted(seq, seq, code, code, kind));
  }

  private static void entry(int ordinal, String action, String at) {
    run(
        "insert into stage_entry values (%d, 0, 1, %d, 'lay-out-and-cut', 'Cut', '%s', 'ann', %s,"
                .formatted(ordinal, ordinal, action, at)
            + " null, '', false)");
  }

  private static void run(String sql) {
    database().sql(sql).update();
  }

  @Test
  void the_route_of_a_build_becomes_the_first_version_of_its_first_route_with_everything_kept() {
    assertThat(
            database()
                .sql("select number, state, build_id from route where name = 'Usual route'")
                .query()
                .singleRow())
        .containsEntry("number", 1)
        .containsEntry("state", "RELEASED")
        .containsEntry("build_id", 1L);
    List<Map<String, Object>> stages =
        database().sql(STAGES).param("name", "Usual route").query().listOfRows();
    assertThat(stages)
        .extracting(stage -> stage.get("code"))
        .containsExactly(
            "lay-out-and-cut", "edges", "first-flange", "second-flange", "inspect", "accepted");
    assertThat(stages.get(1))
        .containsEntry("name", "Our edges")
        .containsEntry("hold_check", "Edges smooth")
        .containsEntry("clearance", null);
    assertThat(stages)
        .extracting(stage -> stage.get("kind"))
        .containsExactly("CUT", "EDGE", "FORM_SHRINK", "FORM_STRETCH", "INSPECT", "ACCEPT");
  }

  @Test
  void parts_of_every_nature_go_on_taking_it_and_the_shipped_routes_can_be_chosen() {
    assertThat(
            database()
                .sql("select nature from route_choice where route_name = 'Usual route'")
                .query(String.class)
                .set())
        .hasSize(PartNature.values().length);
    assertThat(
            database()
                .sql("select name from route where build_id = 1 and state = 'RELEASED'")
                .query(String.class)
                .list())
        .hasSize(1 + PartNature.values().length);
  }

  @Test
  void a_piece_keeps_its_stages_and_its_log_and_names_no_version() {
    assertThat(
            database()
                .sql("select state, stages_done, log_lines, route_id from piece where id = 1")
                .query()
                .singleRow())
        .containsEntry("state", "IN_WORK")
        .containsEntry("stages_done", 1)
        .containsEntry("log_lines", 2)
        .containsEntry("route_id", null);
    List<Map<String, Object>> stages =
        database()
            .sql("select code, kind, finished_by from piece_stage where piece_id = 1 order by seq")
            .query()
            .listOfRows();
    assertThat(stages).hasSize(6);
    assertThat(stages.get(0)).containsEntry("finished_by", "ann");
    assertThat(stages)
        .as("this part is drawn with its stretch flange first")
        .extracting(stage -> stage.get("kind"))
        .containsExactly("CUT", "EDGE", "FORM_STRETCH", "FORM_SHRINK", "INSPECT", "ACCEPT");
  }

  @Test
  void accounts_are_cleared_for_what_their_role_usually_is() {
    assertThat(clearances(1))
        .containsExactlyInAnyOrder("CUT", "FORM_SHRINK", "FORM_STRETCH", "HEAT_TREAT");
    assertThat(clearances(2)).containsExactly("INSPECT");
  }

  /** Tells when a shipped route and the copy of it in the migration are no longer the same. */
  @ParameterizedTest
  @EnumSource(PartNature.class)
  void an_old_build_gets_the_routes_that_a_new_build_gets(PartNature nature) {
    Route shipped = RouteTemplates.route(nature, 1, "ann", APart.NOON);
    List<String> expected =
        shipped.stages().stream()
            .map(
                stage ->
                    line(
                        stage.seq(),
                        stage.code(),
                        stage.name(),
                        stage.kind(),
                        stage.holdCheck(),
                        stage.flangesNeeded(),
                        stage.clearance(),
                        stage.card().needsBlock()))
            .toList();

    assertThat(
            database()
                .sql(STAGES)
                .param("name", RouteTemplates.nameFor(nature))
                .query()
                .listOfRows()
                .stream()
                .map(row -> line(row.values().toArray()))
                .toList())
        .isEqualTo(expected);
  }

  @Test
  void the_shipped_check_comes_along() {
    assertThat(database().sql("select question from stage_check").query(String.class).list())
        .containsExactly("Furnace chart kept with the piece");
  }

  private static String line(@Nullable Object... values) {
    return Arrays.toString(values);
  }

  private static List<String> clearances(long account) {
    return database()
        .sql("select clearance from account_clearance where account_id = :id")
        .param("id", account)
        .query(String.class)
        .list();
  }
}
