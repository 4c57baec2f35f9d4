package dev.flangewright.receipts;

import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * The form that is being sent, as something that may be sent again. One that waited on a phone
 * carries two fields more: {@code entryKey}, its own UUID, and {@code doneAt}, the instant at which
 * it was made. One from a browser carries neither.
 */
@Component
public class SentForm {

  private static final String DONE_AT = "doneAt";

  /** What may differ when the same entry is sent again. */
  private static final Set<String> OF_THE_SENDING =
      Set.of(EntryKey.FIELD, DONE_AT, "seen", "_csrf");

  private final HttpServletRequest request;

  SentForm(HttpServletRequest request) {
    this.request = request;
  }

  /**
   * @throws Refused if the key or the instant cannot be read
   */
  public Ask ask() {
    return new Ask(key(), doneAt(), content());
  }

  /** What was sent later has no page to come back to: it is told the problem. */
  public void throwIfSentLater(RuntimeException refusal) {
    if (typed(EntryKey.FIELD) != null) {
      throw refusal;
    }
  }

  private String content() {
    Map<String, String> fields = new TreeMap<>();
    request.getParameterMap().forEach((name, values) -> fields.put(name, Arrays.toString(values)));
    fields.keySet().removeAll(OF_THE_SENDING);
    return request.getServletPath() + " " + fields;
  }

  private @Nullable UUID key() {
    String typed = typed(EntryKey.FIELD);
    try {
      return typed == null ? null : UUID.fromString(typed);
    } catch (IllegalArgumentException e) {
      throw Refused.unacceptable(EntryKey.FIELD + " is no UUID.");
    }
  }

  private @Nullable Instant doneAt() {
    String typed = typed(DONE_AT);
    try {
      return typed == null ? null : Instant.parse(typed);
    } catch (DateTimeParseException e) {
      throw Refused.unacceptable(DONE_AT + " is no instant such as 2026-06-02T14:10:00Z.");
    }
  }

  private @Nullable String typed(String field) {
    String typed = request.getParameter(field);
    return typed == null || typed.isBlank() ? null : typed;
  }
}
