package dev.flangewright.people;

import java.util.regex.Pattern;

/** Which account names are taken. */
final class Usernames {

  private static final Pattern ALLOWED = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,59}");

  private Usernames() {}

  /**
   * @return the name without blanks at its ends
   * @throws Refused if it is empty, longer than 60 characters or has other signs
   */
  static String acceptable(String username) {
    String name = username.strip();
    if (!ALLOWED.matcher(name).matches()) {
      throw Refused.unacceptable(
          "The name may have 1 to 60 letters, digits, spaces, dots, dashes and underscores.");
    }
    return name;
  }
}
