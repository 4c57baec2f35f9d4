package dev.flangewright.people;

/**
 * What a token is to be.
 *
 * @param name what it is for, in its holder's words, 1 to 60 characters
 * @param mayChange whether it may change records; else it only reads
 * @param days until it expires, 1 to 366
 */
public record TokenPlan(String name, boolean mayChange, int days) {

  private static final int LONGEST_NAME = 60;
  private static final int MOST_DAYS = 366;

  /**
   * @throws Refused if the name is missing or too long, or the days are out of range
   */
  public TokenPlan {
    name = name.strip();
    if (name.isEmpty() || name.length() > LONGEST_NAME) {
      throw Refused.unacceptable("Say in 1 to 60 characters what the token is for.");
    }
    if (days < 1 || days > MOST_DAYS) {
      throw Refused.unacceptable("A token is good for 1 to 366 days.");
    }
  }
}
