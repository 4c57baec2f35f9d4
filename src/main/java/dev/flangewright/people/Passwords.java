package dev.flangewright.people;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.util.List;

/**
 * Which passwords are taken: long ones that are not among those that people guess first; no
 * composition rules (OWASP ASVS 5.0, 6.2.1, 6.2.4, 6.2.5). The lists of common passwords, names and
 * words come with the zxcvbn library; nothing is asked over the network.
 */
final class Passwords {

  static final int SHORTEST = 12;
  static final int LONGEST = 200;

  /**
   * Guesses that somebody who knows the lists would need at most; the library's own bound for what
   * withstands guessing at a sign-in page.
   */
  private static final double EASILY_GUESSED = 1e6;

  private static final int ENOUGH_TO_JUDGE = 100;

  private Passwords() {}

  /**
   * @param own words that somebody would try first for this account, such as its name
   * @return the password as it is
   * @throws Refused outside 12 to 200 characters, or if it is easily guessed
   */
  static String acceptable(String password, String... own) {
    int length = password.codePointCount(0, password.length());
    if (length < SHORTEST || length > LONGEST) {
      throw Refused.unacceptable(
          "The password has %d characters; it needs %d to %d."
              .formatted(length, SHORTEST, LONGEST));
    }
    if (isEasilyGuessed(password, List.of(own))) {
      throw Refused.unacceptable(
          "This password is one of those that are guessed first. Take a few words that do not"
              + " belong together.");
    }
    return password;
  }

  private static boolean isEasilyGuessed(String password, List<String> own) {
    String judged = password.substring(0, Math.min(password.length(), ENOUGH_TO_JUDGE));
    return new Zxcvbn().measure(judged, own).getGuesses() < EASILY_GUESSED;
  }
}
