package dev.flangewright.records.archive;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256, which every Java platform has. */
final class Sha256 {

  private Sha256() {}

  static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  static String hex(byte[] bytes) {
    return HexFormat.of().formatHex(digest().digest(bytes));
  }
}
