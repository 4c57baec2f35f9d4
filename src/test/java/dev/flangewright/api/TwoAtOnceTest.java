package dev.flangewright.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;
import tools.jackson.databind.JsonNode;

/** Two people at the same moment, with real threads: one wins, the other is told. */
class TwoAtOnceTest extends ApiTest {

  private static final int ROUNDS = 8;

  @Test
  void of_two_who_start_a_stage_one_wins_and_the_other_is_told() throws Exception {
    for (int round = 0; round < ROUNDS; round++) {
      long piece = newPiece();
      String start = "/pieces/" + piece + "/stages/lay-out-and-cut/start";
      assertOneWins(200, atOnce(() -> answer("fitter", start), () -> answer("volunteer", start)));
      JsonNode log = body(read("guest", "/pieces/" + piece)).get("log");
      assertThat(log).as("exactly one entry is stored").hasSize(1);
    }
  }

  @Test
  void of_two_who_begin_a_piece_one_wins_and_the_other_is_told() throws Exception {
    for (int round = 0; round < ROUNDS; round++) {
      long part = workshop.partOnACircle(1.2, 3, 500, 20);
      String begin = "/parts/" + part + "/pieces";
      assertOneWins(201, atOnce(() -> answer("fitter", begin), () -> answer("volunteer", begin)));
      assertThat(body(read("guest", "/parts/" + part)).get("pieces")).hasSize(1);
    }
  }

  private MockHttpServletResponse answer(String who, String address) throws Exception {
    return send(who, address, "").andReturn().getResponse();
  }

  private static void assertOneWins(int won, List<MockHttpServletResponse> answers)
      throws Exception {
    List<Integer> statuses = answers.stream().map(MockHttpServletResponse::getStatus).toList();
    assertThat(statuses).containsExactlyInAnyOrder(won, 409);
    for (MockHttpServletResponse answer : answers) {
      if (answer.getStatus() == 409) {
        assertThat(answer.getContentType()).isEqualTo("application/problem+json");
        assertThat(answer.getContentAsString()).contains("\"detail\":\"");
      }
    }
  }

  private static List<MockHttpServletResponse> atOnce(
      Callable<MockHttpServletResponse> one, Callable<MockHttpServletResponse> other)
      throws Exception {
    CyclicBarrier together = new CyclicBarrier(2);
    ExecutorService people = Executors.newFixedThreadPool(2);
    try {
      List<Future<MockHttpServletResponse>> answers = new ArrayList<>();
      for (Callable<MockHttpServletResponse> each : List.of(one, other)) {
        answers.add(
            people.submit(
                () -> {
                  together.await();
                  return each.call();
                }));
      }
      return List.of(answers.get(0).get(), answers.get(1).get());
    } finally {
      people.shutdown();
    }
  }
}
