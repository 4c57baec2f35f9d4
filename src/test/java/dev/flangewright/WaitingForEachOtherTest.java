package dev.flangewright;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.LogStage;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.testing.DatabaseTest;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.support.TransactionTemplate;

/** A transaction that the database gives up for another is a conflict, never a failure of ours. */
@DatabaseTest
class WaitingForEachOtherTest {

  @Autowired ApplicationContext context;
  @Autowired LogStage log;
  @Autowired TransactionTemplate transaction;

  @Test
  void of_two_who_hold_what_the_other_needs_one_is_told_that_somebody_was_quicker()
      throws Exception {
    AWorkshop workshop = AWorkshop.in(context);
    long one = workshop.begin(workshop.part("TW-F07-S1")).id();
    long other = workshop.begin(workshop.part("TW-F07-S2")).id();
    CyclicBarrier bothHold = new CyclicBarrier(2);
    ExecutorService people = Executors.newFixedThreadPool(2);
    List<Problem> problems = new ArrayList<>();
    try {
      Future<?> first = people.submit(() -> both("ann", one, other, bothHold));
      Future<?> second = people.submit(() -> both("ben", other, one, bothHold));
      for (Future<?> each : List.of(first, second)) {
        try {
          each.get();
        } catch (ExecutionException lost) {
          problems.add(ProblemOf.failure(lost.getCause()).orElseThrow());
        }
      }
    } finally {
      people.shutdown();
    }

    assertThat(problems).extracting(Problem::kind).containsExactly("quicker");
    assertThat(problems.get(0).status().value()).isEqualTo(409);
  }

  private void both(String who, long first, long then, CyclicBarrier bothHold) {
    SignedIn.as(
        who,
        Role.FITTER,
        () ->
            transaction.executeWithoutResult(
                status -> {
                  log.start(first, "lay-out-and-cut", null, "");
                  await(bothHold);
                  log.start(then, "lay-out-and-cut", null, "");
                }));
  }

  private static void await(CyclicBarrier barrier) {
    try {
      barrier.await();
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
