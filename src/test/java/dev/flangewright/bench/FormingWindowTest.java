package dev.flangewright.bench;

import static dev.flangewright.bench.AHeatTreatment.SET;
import static dev.flangewright.bench.AHeatTreatment.TREAT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.flangewright.heat.FormingWindows;
import dev.flangewright.heat.OpenWindow;
import dev.flangewright.heat.PieceWindow;
import dev.flangewright.heat.WindowState;
import dev.flangewright.heat.Windows;
import dev.flangewright.materials.FormingWindow;
import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.people.Role;
import dev.flangewright.receipts.Ask;
import dev.flangewright.testing.DatabaseTest;
import dev.flangewright.testing.StatementCount;
import jakarta.persistence.EntityManagerFactory;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.access.AccessDeniedException;

/** How the bench keeps people from forming metal that has hardened after the quench. */
@DatabaseTest
class FormingWindowTest {

  @Autowired ApplicationContext context;
  @Autowired LogStage log;
  @Autowired LogFreezer freezer;
  @Autowired LogOnce once;
  @Autowired FormingWindows windows;
  @Autowired MaterialLibrary library;
  @Autowired TimeLine timeLine;
  @Autowired JdbcTemplate database;
  @Autowired EntityManagerFactory entities;
  AHeatTreatment heat;

  @BeforeEach
  void openTheWorkshop() {
    heat = AHeatTreatment.in(context);
  }

  @Test
  void the_countdown_is_worked_out_from_the_rows_that_are_shipped() {
    assertThat(figures("2024")).isEqualTo(bare(Windows.of2024()));
    assertThat(figures("7075")).isEqualTo(bare(Windows.of7075()));
    assertThat(library.formingWindow("3003")).isEmpty();
  }

  private FormingWindow figures(String alloy) {
    return bare(library.formingWindow(alloy).orElseThrow());
  }

  private static FormingWindow bare(FormingWindow window) {
    return new FormingWindow(
        window.alloy(),
        window.severeFromMin(),
        window.severeToMin(),
        window.freezeWithinMin(),
        window.storage(),
        List.of());
  }

  @Test
  void the_window_runs_from_the_finish_of_the_heat_treatment_or_from_the_time_told() {
    long now = heat.quenched("TW-F07-S1");
    assertThat(window(now, 4).quenchedAt()).isEqualTo(heat.minute(0));

    long told = heat.piece("TW-F07-S2");
    heat.at(0, Role.FITTER, () -> finish(told, new Quenching(heat.minute(-12), false)));
    assertThat(window(told, 4).countdown().state()).isEqualTo(WindowState.CLOSING);
    assertThat(window(told, 18).countdown().state()).isEqualTo(WindowState.PAST);
  }

  @Test
  void a_quench_that_cannot_be_leaves_the_heat_treatment_unfinished() {
    long piece = heat.piece("TW-F07-S1");

    assertThatThrownBy(
            () ->
                heat.at(0, Role.FITTER, () -> finish(piece, new Quenching(heat.minute(30), false))))
        .hasMessageContaining("in the future");

    assertThat(windows.ofPiece(piece, heat.minute(1))).isEmpty();
    heat.at(1, Role.FITTER, () -> finish(piece, Quenching.NOT_SAID));
  }

  @Test
  void annealing_starts_no_window_and_another_stage_tells_no_quench() {
    long piece = heat.piece("TW-F07-S1");
    heat.at(0, Role.FITTER, () -> finish(piece, new Quenching(null, true)));
    assertThat(windows.ofPiece(piece, heat.minute(1))).isEmpty();

    heat.at(600, Role.FITTER, () -> start(piece, SET));
    assertThatThrownBy(
            () ->
                heat.at(
                    601,
                    Role.FITTER,
                    () ->
                        log.finish(
                            piece,
                            SET,
                            null,
                            WorkDone.in(1.0, "").quenched(new Quenching(heat.minute(600), false)))))
        .hasMessageContaining("no heat treatment");
  }

  @Test
  void setting_starts_within_the_window_and_may_be_finished_after_it() {
    long piece = heat.quenched("TW-F07-S1");
    heat.at(29, Role.VOLUNTEER, () -> start(piece, SET));
    heat.at(50, Role.VOLUNTEER, () -> log.finish(piece, SET, 0.5, null, ""));
  }

  @Test
  void past_the_window_setting_waits_for_the_lead_and_trimming_does_not() {
    long piece = heat.quenched("TW-F07-S1");
    assertBarred(piece, 31, "forming window is past");
    assertThatThrownBy(
            () ->
                heat.at(32, Role.VOLUNTEER, () -> freezer.letBeFormedLate(piece, "it feels soft")))
        .isInstanceOf(AccessDeniedException.class);
    assertThatThrownBy(() -> heat.at(32, Role.LEAD, () -> freezer.letBeFormedLate(piece, " ")))
        .hasMessageContaining("reason is missing");
    assertBarred(piece, 33, "forming window is past");

    heat.at(34, Role.LEAD, () -> freezer.letBeFormedLate(piece, "coupons bent without a crack"));
    heat.at(35, Role.VOLUNTEER, () -> start(piece, SET));

    assertThat(timeLine.of(piece))
        .filteredOn(event -> event.who().equals("lead"))
        .extracting(PieceEvent::what, PieceEvent::note)
        .contains(
            org.assertj.core.groups.Tuple.tuple(
                "let it be formed past its forming window", "coupons bent without a crack"));
    heat.at(60, Role.VOLUNTEER, () -> log.finish(piece, SET, 0.5, null, ""));
    heat.at(70, Role.VOLUNTEER, () -> start(piece, "final-trim"));
  }

  @Test
  void what_was_started_before_the_lead_let_it_is_still_refused() {
    long piece = heat.quenched("TW-F07-S1");
    heat.at(40, Role.LEAD, () -> freezer.letBeFormedLate(piece, "coupons bent without a crack"));
    assertThatThrownBy(
            () -> heat.at(41, Role.VOLUNTEER, () -> sentLater(piece, heat.minute(39), SET)))
        .hasMessageContaining("past");
  }

  @Test
  void an_entry_that_comes_in_later_is_judged_by_the_time_at_which_it_was_done() {
    long piece = heat.quenched("TW-F07-S1");
    assertThatThrownBy(
            () -> heat.at(90, Role.VOLUNTEER, () -> sentLater(piece, heat.minute(31), SET)))
        .hasMessageContaining("past");
    heat.at(90, Role.VOLUNTEER, () -> sentLater(piece, heat.minute(20), SET));
  }

  @Test
  void nothing_is_formed_in_the_freezer_and_the_rest_of_the_window_is_there_after_it() {
    long piece = heat.quenched("TW-F07-S1");
    heat.at(5, Role.VOLUNTEER, () -> freezer.into(piece, -20, ""));
    assertBarred(piece, 120, "in the freezer");
    heat.at(240, Role.VOLUNTEER, () -> freezer.out(piece, ""));
    assertThat(window(piece, 250).countdown().state()).isEqualTo(WindowState.CLOSING);
    heat.at(260, Role.VOLUNTEER, () -> start(piece, SET));

    assertThat(timeLine.of(piece).stream().map(PieceEvent::what).toList())
        .contains(
            "put it into the freezer at −20 °C (−4 °F), after 5 min out of it: within the 15 min of"
                + " the table",
            "took it out of the freezer");
  }

  @Test
  void taking_back_the_finish_takes_the_quench_back_with_it() {
    long piece = heat.quenched("TW-F07-S1");
    heat.at(2, Role.FITTER, () -> log.undo(piece, null, "wrong piece"));
    assertThat(windows.ofPiece(piece, heat.minute(3))).isEmpty();
    assertThat(windows.ofBuild(heat.buildId(), heat.minute(3))).isEmpty();

    heat.at(5, Role.FITTER, () -> finish(piece, Quenching.NOT_SAID));
    assertThat(window(piece, 6).quenchedAt()).isEqualTo(heat.minute(5));
    assertThat(timeLine.of(piece))
        .filteredOn(event -> event.what().startsWith("told the quench"))
        .extracting(PieceEvent::undone)
        .containsExactly(true, false);
  }

  @Test
  void taking_another_entry_back_leaves_the_quench() {
    long piece = heat.quenched("TW-F07-S1");
    heat.at(2, Role.FITTER, () -> start(piece, SET));
    heat.at(3, Role.FITTER, () -> log.undo(piece, null, "not yet"));
    assertThat(windows.ofPiece(piece, heat.minute(3))).isPresent();
  }

  @Test
  void of_7075_nothing_is_counted_down_and_nothing_is_refused() {
    long piece = heat.piece("TW-F07-S1");
    database.update(
        "update part set alloy = '7075' where id = (select part_id from piece where id = ?)",
        piece);
    heat.at(0, Role.FITTER, () -> finish(piece, Quenching.NOT_SAID));

    assertThat(window(piece, 600).countdown().state()).isEqualTo(WindowState.NOT_KNOWN);
    heat.at(600, Role.VOLUNTEER, () -> start(piece, SET));
  }

  @Test
  void a_quench_is_told_later_only_where_none_is_known_and_by_who_is_cleared() {
    long piece = heat.piece("TW-F07-S1");
    heat.at(0, Role.FITTER, () -> finish(piece, new Quenching(null, true)));
    assertThatThrownBy(
            () -> heat.at(1, Role.VOLUNTEER, () -> freezer.quenched(piece, heat.minute(0), "")))
        .hasMessageContaining("cleared");
    heat.at(2, Role.FITTER, () -> freezer.quenched(piece, heat.minute(-1), ""));
    assertThat(window(piece, 3).quenchedAt()).isEqualTo(heat.minute(-1));
    assertThatThrownBy(
            () -> heat.at(4, Role.FITTER, () -> freezer.quenched(piece, heat.minute(3), "")))
        .hasMessageContaining("known already");
  }

  @Test
  void a_list_reads_the_windows_of_a_whole_build_in_one_statement() throws Throwable {
    long open = heat.quenched("TW-F07-S1");
    long frozen = heat.quenched("TW-F07-S2");
    long untreated = heat.piece("TW-F07-S3L");
    heat.at(5, Role.FITTER, () -> freezer.into(frozen, -20, ""));
    library.formingWindow("2024");

    assertThat(
            StatementCount.of(entities, () -> windows.ofBuild(heat.buildId(), heat.minute(12.5))))
        .isEqualTo(1);

    Map<Long, OpenWindow> found = windows.ofBuild(heat.buildId(), heat.minute(12.5));
    assertThat(found).containsOnlyKeys(open, frozen).doesNotContainKey(untreated);
    assertThat(found.get(open))
        .isEqualTo(
            new OpenWindow(
                "2024",
                WindowState.CLOSING,
                heat.minute(30),
                false,
                "forming window closes in 17 min"));
    assertThat(found.get(frozen).state()).isEqualTo(WindowState.IN_FREEZER);
    assertThat(found.get(frozen).closesAt()).isEqualTo(heat.minute(5).plus(Duration.ofDays(30)));
  }

  private void assertBarred(long piece, double minute, String why) {
    StageRefusal refused =
        catchThrowableOfType(
            StageRefusal.class, () -> heat.at(minute, Role.VOLUNTEER, () -> start(piece, SET)));
    assertThat(refused).hasMessageContaining(why);
    assertThat(refused.rule()).isEqualTo(StageRefusal.Rule.BARRED);
  }

  private PieceWindow window(long piece, double minute) {
    Optional<PieceWindow> found = windows.ofPiece(piece, heat.minute(minute));
    return found.orElseThrow();
  }

  private void start(long piece, String stage) {
    log.start(piece, stage, null, "");
  }

  private void sentLater(long piece, Instant doneAt, String stage) {
    Ask ask = new Ask(UUID.randomUUID(), doneAt, "start " + stage);
    once.log(ask, piece, () -> start(piece, stage));
  }

  private void finish(long piece, Quenching quenching) {
    log.finish(piece, TREAT, null, WorkDone.in(1.0, "").quenched(quenching));
  }
}
