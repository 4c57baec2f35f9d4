package dev.flangewright.people;

/** Which passwords are taken: length only, no composition rules (OWASP ASVS 5.0, 6.2.1, 6.2.5). */
final class Passwords {

  static final int SHORTEST = 12;
  static final int LONGEST = 200;

  private Passwords() {}

  /**
   * @return the password as it is
   * @throws Refused outside 12 to 200 characters
   */
  static String acceptable(String password) {
    int length = password.codePointCount(0, password.length());
    if (length < SHORTEST || length > LONGEST) {
      throw Refused.unacceptable(
          "The password has %d characters; it needs %d to %d."
              .formatted(length, SHORTEST, LONGEST));
    }
    return password;
  }
}
