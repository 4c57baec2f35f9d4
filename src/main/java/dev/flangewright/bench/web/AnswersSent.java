package dev.flangewright.bench.web;

import dev.flangewright.bench.Answer;
import dev.flangewright.bench.LogStage;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The answers that a form of the piece page sent, by the code of their check. */
record AnswersSent(Map<String, Answer> answers) {

  /** What the name of an answer's field begins with. */
  private static final String FIELD = "check.";

  /**
   * Reads them; a field left empty is no answer.
   *
   * @throws dev.flangewright.people.Refused if one cannot be read
   */
  static AnswersSent of(Map<String, String> sent) {
    Map<String, Answer> answers = new TreeMap<>();
    sent.forEach(
        (field, typed) -> {
          if (field.startsWith(FIELD) && !typed.isBlank()) {
            answers.put(field.substring(FIELD.length()), Answer.read(typed));
          }
        });
    return new AnswersSent(answers);
  }

  /**
   * Logs them, each as an entry of its own.
   *
   * @param seen the version that the page showed
   * @return the version for the entry that follows: null once something was logged
   */
  @Nullable Long logOn(LogStage log, long pieceId, String code, @Nullable Long seen) {
    Long next = seen;
    for (Map.Entry<String, Answer> answer : answers.entrySet()) {
      log.answer(pieceId, code, answer.getKey(), answer.getValue(), next, "");
      next = null;
    }
    return next;
  }
}
