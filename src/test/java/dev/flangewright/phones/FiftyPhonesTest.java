package dev.flangewright.phones;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.testing.DatabaseTest;
import java.net.http.HttpClient;
import java.net.http.HttpClient.Version;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * Fifty phones log five thousand entries on two hundred pieces through the real server: each sent
 * once, twice or three times, together or one after the other, some with the answer thrown away,
 * some against another phone that tries the same. Seeded, so that the same is tried every time.
 */
@DatabaseTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class FiftyPhonesTest {

  private static final int PHONES = 50;
  private static final int PEOPLE = 10;
  private static final int PIECES = 200;
  private static final int ENTRIES = 25;
  private static final String PASSWORD = "four plain words here";
  private static final String HELD = "edges";

  @Autowired ApplicationContext context;
  @Autowired KeepAccounts accounts;
  @Autowired JdbcTemplate database;
  @LocalServerPort int port;
  private List<String> route;

  @Test
  void five_thousand_entries_are_each_in_the_history_once_and_no_piece_is_in_two_states()
      throws Exception {
    List<PieceAtWork> pieces = begin();
    List<Phone> phones = signIn();

    work(phones, new ConcurrentLinkedQueue<>(pieces));

    assertThat(pieces).allMatch(PieceAtWork::isDone);
    for (PieceAtWork piece : pieces) {
      assertThat(lines(piece.id())).containsExactlyElementsOf(piece.taken());
      assertStandsWhereItsLogLeads(piece.id());
    }
    assertThat(database.queryForObject("select count(*) from receipt", Long.class))
        .isGreaterThanOrEqualTo(PIECES * ENTRIES);
  }

  private List<PieceAtWork> begin() {
    AWorkshop workshop = AWorkshop.in(context);
    List<PieceAtWork> pieces = new ArrayList<>();
    for (int n = 0; n < PIECES; n++) {
      Piece piece = workshop.begin(workshop.part("TW-F07-S%03d".formatted(n)));
      List<PieceStage> all = piece.stages();
      route = all.stream().map(PieceStage::code).toList();
      List<String> worked =
          all.stream().filter(s -> !s.kind().byInspection()).map(PieceStage::code).toList();
      Random chance = new Random(n);
      pieces.add(new PieceAtWork(piece.id(), Script.of(worked, HELD, ENTRIES, chance), chance));
    }
    return pieces;
  }

  private List<Phone> signIn() throws Exception {
    HttpClient network = HttpClient.newBuilder().version(Version.HTTP_1_1).build();
    List<Phone> phones = new ArrayList<>();
    for (int n = 0; n < PHONES; n++) {
      String account = "phones-of-" + n % PEOPLE;
      if (n < PEOPLE) {
        SignedIn.as("lead", Role.LEAD, () -> accounts.add(account, Role.LEAD, PASSWORD));
      }
      phones.add(Phone.signedIn(network, "http://localhost:" + port, account, PASSWORD));
    }
    return phones;
  }

  /** Every phone takes a piece from the queue, logs its next entry, and puts it back. */
  private static void work(List<Phone> phones, ConcurrentLinkedQueue<PieceAtWork> queue)
      throws InterruptedException, ExecutionException {
    ExecutorService people = Executors.newFixedThreadPool(phones.size());
    try {
      List<Future<?>> all = new ArrayList<>();
      for (int n = 0; n < phones.size(); n++) {
        Phone phone = phones.get(n);
        Phone other = phones.get((n + 1) % phones.size());
        all.add(people.submit(() -> use(phone, other, queue)));
      }
      for (Future<?> one : all) {
        one.get();
      }
    } finally {
      people.shutdownNow();
    }
  }

  private static boolean use(Phone phone, Phone other, ConcurrentLinkedQueue<PieceAtWork> queue)
      throws InterruptedException, ExecutionException {
    for (PieceAtWork piece = queue.poll(); piece != null; piece = queue.poll()) {
      piece.next(phone, other);
      if (!piece.isDone()) {
        queue.add(piece);
      }
    }
    return true;
  }

  private List<String> lines(long piece) {
    return database.query(
        "select who, action, stage_code, note from stage_entry where piece_id = ? order by ordinal",
        (row, n) ->
            "%s %s %s %s"
                .formatted(
                    row.getString("who"),
                    row.getString("action"),
                    row.getString("stage_code"),
                    row.getString("note")),
        piece);
  }

  private void assertStandsWhereItsLogLeads(long piece) {
    Map<String, Replay.Stage> expected = Replay.of(route, steps(piece));
    assertThat(stages(piece)).isEqualTo(expected);
    Map<String, Object> row =
        database.queryForMap(
            "select version, log_lines, stages_done, stages_total, current_stage_code,"
                + " current_stage_begun, held from piece where id = ?",
            piece);
    Map.Entry<String, Replay.Stage> current =
        expected.entrySet().stream()
            .filter(stage -> !stage.getValue().finished())
            .findFirst()
            .orElseThrow();
    boolean begun = current.getValue().begun();
    assertThat(row.get("version")).as("each entry changes it once").isEqualTo((long) ENTRIES);
    assertThat(row.get("log_lines")).isEqualTo(ENTRIES);
    assertThat(row.get("stages_done"))
        .isEqualTo((int) expected.values().stream().filter(Replay.Stage::finished).count());
    assertThat(row.get("stages_total")).isEqualTo(route.size());
    assertThat(row.get("current_stage_code")).isEqualTo(current.getKey());
    assertThat(row.get("current_stage_begun")).isEqualTo(begun);
    assertThat(row.get("held"))
        .isEqualTo(current.getKey().equals(HELD) && begun && !current.getValue().checked());
  }

  private List<Script.Step> steps(long piece) {
    return database.query(
        "select action, stage_code from stage_entry where piece_id = ? order by ordinal",
        (row, n) -> new Script.Step(row.getString("action"), row.getString("stage_code")),
        piece);
  }

  private Map<String, Replay.Stage> stages(long piece) {
    Map<String, Replay.Stage> stages = new HashMap<>();
    database.query(
        "select code, started_at, checked_at, finished_at from piece_stage where piece_id = ?",
        row -> {
          stages.put(
              row.getString("code"),
              new Replay.Stage(
                  row.getTimestamp("started_at") != null,
                  row.getTimestamp("checked_at") != null,
                  row.getTimestamp("finished_at") != null));
        },
        piece);
    return stages;
  }
}
