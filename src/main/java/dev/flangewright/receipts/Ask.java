package dev.flangewright.receipts;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What comes with an entry that may be sent twice, because the answer to the first time was lost.
 *
 * @param key the entry's own; null if it is sent without one
 * @param doneAt when it was done, as the sender's clock tells; null for an entry made now
 * @param content everything that is asked for, save what may differ when it is sent again: when it
 *     was done, and what the sender had seen
 */
public record Ask(@Nullable UUID key, @Nullable Instant doneAt, String content) {

  /** SHA-256 of the content, in hexadecimal. */
  String digest() {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java platform has it
    }
  }
}
