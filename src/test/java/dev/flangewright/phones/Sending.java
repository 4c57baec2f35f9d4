package dev.flangewright.phones;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * One entry of one phone, sent with its key as often as it takes. An answer that says that another
 * was quicker, or that the installation is busy, is no answer yet.
 *
 * @param fields all that the form sends, the key included
 */
record Sending(Phone phone, String piece, Script.Step step, Map<String, String> fields) {

  private static final int MOST_TRIES = 60;

  /** What became of an entry in the end. */
  enum Outcome {
    TAKEN,
    REFUSED
  }

  /**
   * @param seen the version of the piece that the phone has seen; negative to keep it to itself
   */
  static Sending of(Phone phone, String piece, Script.Step step, int seen, Random chance) {
    String key = new UUID(chance.nextLong(), chance.nextLong()).toString();
    Map<String, String> fields = new HashMap<>();
    fields.put("entryKey", key);
    fields.put(step.action().equals("UNDO") ? "reason" : "note", key);
    if (seen >= 0) {
      fields.put("seen", String.valueOf(seen));
    }
    return new Sending(phone, piece, step, fields);
  }

  /** The line that it leaves in the log of the piece. */
  String line() {
    return "%s %s %s %s"
        .formatted(phone.account(), step.action(), step.stage(), fields.get("entryKey"));
  }

  CompletableFuture<HttpResponse<String>> once() {
    return phone.send(piece + step.address(), fields);
  }

  /** Sends it and hangs up before the answer, which may be before or after it is stored. */
  void andHangUp(int patienceMs) throws InterruptedException, ExecutionException {
    CompletableFuture<HttpResponse<String>> lost = once();
    try {
      lost.get(patienceMs, TimeUnit.MILLISECONDS);
    } catch (TimeoutException hungUp) {
      lost.cancel(true);
    }
  }

  /** Sends it again and again until it is taken or refused. */
  Outcome settled(CompletableFuture<HttpResponse<String>> first) {
    HttpResponse<String> answer = first.join();
    for (int tries = 1; isNoAnswer(answer); tries++) {
      if (tries == MOST_TRIES) {
        throw new AssertionError(line() + " is never settled: " + answer.body());
      }
      answer = once().join();
    }
    return outcome(answer);
  }

  private static boolean isNoAnswer(HttpResponse<String> answer) {
    return answer.statusCode() == 503
        || answer.statusCode() == 409 && answer.body().contains("problem:quicker");
  }

  private Outcome outcome(HttpResponse<String> answer) {
    String where = answer.headers().firstValue("Location").orElse("");
    if (answer.statusCode() / 100 == 3 && where.endsWith(piece)) {
      return Outcome.TAKEN;
    }
    if (answer.statusCode() == 409 && answer.body().contains("problem:conflict")) {
      return Outcome.REFUSED;
    }
    throw new AssertionError(
        "%s is answered %d %s %s".formatted(line(), answer.statusCode(), where, answer.body()));
  }
}
