package dev.flangewright.blocks;

import dev.flangewright.people.Refused;
import java.time.Instant;

/** Who changed the condition of a block, when, and why. */
public record Signed(String who, Instant at, String why) {

  private static final int LONGEST = 2000;

  /**
   * @throws Refused if the words are longer than 2000 characters
   */
  public Signed {
    why = why.strip();
    if (why.length() > LONGEST) {
      throw Refused.unacceptable("why may have at most " + LONGEST + " characters.");
    }
  }
}
