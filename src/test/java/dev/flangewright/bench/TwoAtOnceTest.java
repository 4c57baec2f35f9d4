package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.parts.Hand;
import dev.flangewright.people.Refused;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.testing.DatabaseTest;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;

/** Two people log on one piece at the same moment, in threads of their own. */
@DatabaseTest
class TwoAtOnceTest {

  @Autowired ApplicationContext context;
  @Autowired LogStage log;
  @Autowired BeginPiece begin;
  @Autowired JdbcTemplate database;
  AWorkshop workshop;

  @BeforeEach
  void openTheWorkshop() {
    workshop = AWorkshop.in(context);
  }

  @Test
  void of_two_who_start_a_stage_one_wins_and_the_other_is_told_who() throws Exception {
    for (int round = 0; round < 5; round++) {
      Piece piece = workshop.begin(workshop.part("TW-F07-S" + round));
      long id = piece.id();

      List<Refused> refused =
          together(
              () -> log.start(id, "lay-out-and-cut", 0L, ""),
              () -> log.start(id, "lay-out-and-cut", 0L, ""));

      assertThat(refused).hasSize(1);
      assertThat(refused.get(0).kind()).isEqualTo(Refused.Kind.CONFLICT);
      assertThat(refused.get(0)).hasMessageMatching("(?s).*(ann|ben) started.*");
      assertThat(entries(id)).isEqualTo(1);
    }
  }

  @Test
  void those_who_do_not_say_what_they_saw_take_turns_too() throws Exception {
    Piece piece = workshop.begin(workshop.part("TW-F07-S11L"));
    long id = piece.id();

    List<Refused> refused =
        together(
            () -> log.start(id, "lay-out-and-cut", null, ""),
            () -> log.start(id, "lay-out-and-cut", null, ""));

    assertThat(refused).hasSize(1);
    assertThat(refused.get(0)).hasMessageContaining("already started by");
    assertThat(entries(id)).isEqualTo(1);
  }

  @Test
  void of_two_who_begin_a_piece_of_one_part_one_wins() throws Exception {
    long part = workshop.part("TW-F07-S12L");

    List<Refused> refused = together(() -> begin.of(part), () -> begin.of(part));

    assertThat(refused).hasSize(1);
    assertThat(refused.get(0)).hasMessageContaining("in work already");
    assertThat(
            database.queryForObject(
                "select count(*) from piece where part_id = ?", Long.class, part))
        .isEqualTo(1);
  }

  @Test
  void of_two_who_begin_a_pair_one_from_each_hand_one_wins() throws Exception {
    for (int round = 0; round < 5; round++) {
      String segment = "P" + round;
      long left = workshop.part("TW-F07-" + segment + "L", segment, Hand.LEFT);
      long right = workshop.part("TW-F07-" + segment + "R", segment, Hand.RIGHT);

      List<Refused> refused = together(() -> begin.pairOf(left), () -> begin.pairOf(right));

      assertThat(refused).hasSize(1);
      assertThat(refused.get(0)).hasMessageContaining("in work already");
      assertThat(
              database.queryForObject(
                  "select count(*) from piece where part_id in (?, ?) and twin_id is not null",
                  Long.class,
                  left,
                  right))
          .isEqualTo(2);
    }
  }

  private @Nullable Long entries(long pieceId) {
    return database.queryForObject(
        "select count(*) from stage_entry where piece_id = ?", Long.class, pieceId);
  }

  /** Does both at the same moment, as ann and as ben; gives back the refusals. */
  private static List<Refused> together(Runnable anns, Runnable bens) throws Exception {
    CyclicBarrier ready = new CyclicBarrier(2);
    ExecutorService people = Executors.newFixedThreadPool(2);
    try {
      List<Future<@Nullable Refused>> outcomes = new ArrayList<>();
      outcomes.add(people.submit(() -> outcome("ann", ready, anns)));
      outcomes.add(people.submit(() -> outcome("ben", ready, bens)));
      List<Refused> refused = new ArrayList<>();
      for (Future<@Nullable Refused> outcome : outcomes) {
        Stream.ofNullable(outcome.get()).forEach(refused::add);
      }
      return refused;
    } finally {
      people.shutdown();
    }
  }

  private static @Nullable Refused outcome(String who, CyclicBarrier ready, Runnable work)
      throws Exception {
    ready.await();
    try {
      SignedIn.as(who, Role.FITTER, work);
      return null;
    } catch (Refused refused) {
      return refused;
    }
  }
}
