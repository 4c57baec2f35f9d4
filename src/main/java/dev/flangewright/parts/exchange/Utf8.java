package dev.flangewright.parts.exchange;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import org.springframework.core.io.Resource;

/** Finds the line at which a file stops being UTF-8: no byte of a longer character is a newline. */
final class Utf8 {

  private Utf8() {}

  /** Counted from 1; the last line if every line is UTF-8. */
  static int firstBadLine(Resource resource) throws IOException {
    try (InputStream in = new BufferedInputStream(resource.getInputStream())) {
      int line = 1;
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      for (int b = in.read(); b >= 0; b = in.read()) {
        bytes.write(b);
        if (b == '\n') {
          if (isBad(bytes.toByteArray())) {
            return line;
          }
          bytes.reset();
          line++;
        }
      }
      return line;
    }
  }

  private static boolean isBad(byte[] line) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(line));
      return false;
    } catch (CharacterCodingException e) {
      return true;
    }
  }
}
