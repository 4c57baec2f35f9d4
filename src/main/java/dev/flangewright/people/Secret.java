package dev.flangewright.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/**
 * A random text that lets its holder in, shown once and kept only as its SHA-256 digest. It has 256
 * bits, so a plain digest withstands guessing.
 */
record Secret(String text) {

  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int BYTES = 32;

  static Secret random() {
    byte[] bytes = new byte[BYTES];
    RANDOM.nextBytes(bytes);
    return new Secret(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
  }

  /** In hexadecimal, 64 digits. */
  String digest() {
    try {
      MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha256.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException("Every Java has SHA-256", missing);
    }
  }
}
