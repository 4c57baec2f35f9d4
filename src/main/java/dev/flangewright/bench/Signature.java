package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import java.time.Instant;

/**
 * Who did something, when, and what they noted.
 *
 * @param receivedAt when the installation learned of it
 */
public record Signature(String who, Instant at, String note, Instant receivedAt) {

  private static final int LONGEST_NOTE = 2000;

  /**
   * @throws Refused if the note is longer than 2000 characters
   */
  public Signature {
    note = note.strip();
    if (note.length() > LONGEST_NOTE) {
      throw Refused.unacceptable("note may have at most " + LONGEST_NOTE + " characters.");
    }
  }

  /** What is told as it is done. */
  public Signature(String who, Instant at, String note) {
    this(who, at, note, at);
  }
}
