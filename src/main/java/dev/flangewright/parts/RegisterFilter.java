package dev.flangewright.parts;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Which lines of the register are asked for; an empty text asks for all.
 *
 * @param q a text that must occur in the line
 * @param frame a frame's code
 * @param state the name of a {@link PartState}
 * @param risk the name of a {@link dev.flangewright.forming.RiskLevel}, or {@link #UNKNOWN}
 */
public record RegisterFilter(String q, String frame, String state, String risk) {

  /** Asks for parts without figures. */
  public static final String UNKNOWN = "UNKNOWN";

  /** A text that was not sent counts as empty. */
  public RegisterFilter {
    q = orEmpty(q).strip();
    frame = orEmpty(frame);
    state = orEmpty(state);
    risk = orEmpty(risk);
  }

  public boolean isEmpty() {
    return q.isEmpty() && frame.isEmpty() && state.isEmpty() && risk.isEmpty();
  }

  boolean takes(RegisterLine line) {
    RegisterPart part = line.part();
    return (q.isEmpty() || part.mentions(q))
        && (frame.isEmpty() || frame.equals(part.frame()))
        && (state.isEmpty() || state.equals(line.progress().state().name()))
        && (risk.isEmpty()
            || risk.equals(Objects.requireNonNullElse(part.riskLevelName(), UNKNOWN)));
  }

  private static String orEmpty(@Nullable String text) {
    return Objects.requireNonNullElse(text, "");
  }
}
