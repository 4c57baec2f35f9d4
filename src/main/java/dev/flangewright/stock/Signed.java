package dev.flangewright.stock;

import dev.flangewright.people.Refused;
import java.time.Instant;

/** Who changed a batch, when, and what they said: who checked, or why. */
public record Signed(String who, Instant at, String words) {

  private static final int LONGEST = 2000;

  /**
   * @throws Refused if the words are longer than 2000 characters
   */
  public Signed {
    words = words.strip();
    if (words.length() > LONGEST) {
      throw Refused.unacceptable("words may have at most " + LONGEST + " characters.");
    }
  }
}
