package dev.flangewright.records.capture;

import dev.flangewright.records.Sha256;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Writes a stored value as the journal has it. */
final class ValueText {

  /** Longer texts are told by their digest, as contents of files are: an entry has to end. */
  private static final int LONGEST = 250_000;

  private ValueText() {}

  static @Nullable String of(@Nullable Object value) {
    if (value == null) {
      return null;
    }
    if (value instanceof byte[] bytes) {
      return digest(bytes);
    }
    String text = value instanceof Enum<?> constant ? constant.name() : value.toString();
    return text.length() > LONGEST ? digest(text.getBytes(StandardCharsets.UTF_8)) : text;
  }

  private static String digest(byte[] bytes) {
    return "sha256:" + Sha256.of(bytes) + " (" + bytes.length + " bytes)";
  }
}
