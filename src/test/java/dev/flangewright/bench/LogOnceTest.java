package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.flangewright.people.Refused;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.receipts.Ask;
import dev.flangewright.testing.DatabaseTest;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;

/** An entry that is sent more than once, as a phone does whose answer was lost. */
@DatabaseTest
class LogOnceTest {

  private static final String CUT = "lay-out-and-cut";

  @Autowired ApplicationContext context;
  @Autowired LogStage log;
  @Autowired LogOnce once;
  @Autowired JdbcTemplate database;
  AWorkshop workshop;
  long piece;
  UUID key;

  @BeforeEach
  void beginAPiece() {
    workshop = AWorkshop.in(context);
    piece = workshop.begin(workshop.part("TW-F07-S1")).id();
    key = UUID.randomUUID();
  }

  @Test
  void an_entry_sent_twice_is_logged_once_and_answered_alike() {
    start("ann", key);
    start("ann", key);

    assertThat(actions()).containsExactly("START");
  }

  @Test
  void of_the_same_entry_arriving_twice_at_once_one_is_logged_and_both_are_answered()
      throws Exception {
    for (int round = 0; round < 5; round++) {
      piece = workshop.begin(workshop.part("TW-F07-S1" + round)).id();
      key = UUID.randomUUID();

      together(() -> start("ann", key), () -> start("ann", key));
      assertThat(actions()).containsExactly("START");
    }
  }

  @Test
  void a_key_is_not_taken_for_another_entry() {
    start("ann", key);

    Refused refused =
        catchThrowableOfType(
            Refused.class,
            () -> send("ann", key, "finish", () -> log.finish(piece, CUT, 1.0, null, "")));

    assertThat(refused.kind()).isEqualTo(Refused.Kind.UNACCEPTABLE);
    assertThat(actions()).containsExactly("START");
  }

  @Test
  void a_key_is_not_taken_for_another_piece() {
    start("ann", key);
    piece = workshop.begin(workshop.part("TW-F07-S2")).id();

    assertThat(catchThrowableOfType(Refused.class, () -> start("ann", key)).kind())
        .isEqualTo(Refused.Kind.UNACCEPTABLE);
    assertThat(actions()).isEmpty();
  }

  @Test
  void keys_are_each_accounts_own() {
    start("ann", key);

    Refused refused = catchThrowableOfType(Refused.class, () -> start("ben", key));

    assertThat(refused).hasMessageContaining("already started by ann");
  }

  @Test
  void a_refused_entry_leaves_no_receipt_and_is_taken_once_it_may_be() {
    Runnable finish = () -> log.finish(piece, CUT, 1.0, null, "");
    assertThat(catchThrowableOfType(Refused.class, () -> send("ann", key, "finish", finish)))
        .hasMessageContaining("has not been started");
    start("ann", UUID.randomUUID());

    send("ann", key, "finish", finish);
    assertThat(actions()).containsExactly("START", "FINISH");
  }

  @Test
  void an_entry_made_earlier_keeps_its_time_beside_the_time_it_came_in() {
    Instant begun = Instant.now().minus(Duration.ofHours(3));
    database.update(
        "update piece set created_at = ? where id = ?", java.sql.Timestamp.from(begun), piece);
    Instant then = begun.plus(Duration.ofHours(1));

    SignedIn.as(
        "ann",
        Role.FITTER,
        () -> once.log(new Ask(key, then, "start"), piece, () -> log.start(piece, CUT, null, "")));

    assertThat(late()).isBetween(Duration.ofMinutes(119), Duration.ofMinutes(125));
  }

  private Duration late() {
    return database.queryForObject(
        "select done_at, received_at from stage_entry where piece_id = ?",
        (row, n) ->
            Duration.between(
                row.getTimestamp("done_at").toInstant(),
                row.getTimestamp("received_at").toInstant()),
        piece);
  }

  private void start(String who, UUID withKey) {
    send(who, withKey, "start", () -> log.start(piece, CUT, null, ""));
  }

  private void send(String who, UUID withKey, String what, Runnable entry) {
    Ask ask = new Ask(withKey, null, what);
    SignedIn.as(who, Role.FITTER, () -> once.log(ask, piece, entry));
  }

  private List<String> actions() {
    return database.queryForList(
        "select action from stage_entry where piece_id = ? order by ordinal", String.class, piece);
  }

  /** Does both at the same moment; throws what either throws. */
  private static void together(Runnable one, Runnable other) throws Exception {
    CyclicBarrier ready = new CyclicBarrier(2);
    ExecutorService phones = Executors.newFixedThreadPool(2);
    try {
      Future<?> first = phones.submit(() -> at(ready, one));
      Future<?> second = phones.submit(() -> at(ready, other));
      first.get();
      second.get();
    } finally {
      phones.shutdown();
    }
  }

  private static @Nullable Void at(CyclicBarrier ready, Runnable work) throws Exception {
    ready.await();
    work.run();
    return null;
  }
}
