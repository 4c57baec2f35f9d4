package dev.flangewright.records.archive;

import dev.flangewright.records.Sha256;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;

/**
 * What a table holds, as one number of rows and one digest: the sum of the SHA-256 of every row,
 * modulo 2²⁵⁶. A sum does not depend on the order of the rows, which the engines sort differently.
 */
final class Contents {

  private static final BigInteger ALL = BigInteger.ONE.shiftLeft(256);

  private final MessageDigest sha256 = Sha256.digest();
  private BigInteger sum = BigInteger.ZERO;
  private long rows;

  void add(String line) {
    byte[] digest = sha256.digest(line.getBytes(StandardCharsets.UTF_8));
    sum = sum.add(new BigInteger(1, digest)).mod(ALL);
    rows++;
  }

  long rows() {
    return rows;
  }

  /** 64 hexadecimal digits. */
  String digest() {
    byte[] bytes = sum.toByteArray();
    byte[] whole = new byte[32];
    int length = Math.min(bytes.length, whole.length);
    System.arraycopy(bytes, bytes.length - length, whole, whole.length - length, length);
    return HexFormat.of().formatHex(whole);
  }
}
