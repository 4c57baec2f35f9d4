package dev.flangewright.records;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), written in 64 lower-case hexadecimal digits. */
public final class Sha256 {

  /** What stands as the hash before the first entry of a chain. */
  public static final String NOTHING = "0".repeat(64);

  private Sha256() {}

  /** Of the text in UTF-8. */
  public static String of(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }

  public static String of(byte[] bytes) {
    return HexFormat.of().formatHex(digest().digest(bytes));
  }

  /** For what comes piece by piece. */
  public static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("Every Java platform has SHA-256", impossible);
    }
  }
}
