package dev.flangewright.parts.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;

/**
 * The files to import; each is opened more than once, so a resource must be readable again. Either
 * may be missing.
 */
public record RegisterFiles(@Nullable Resource register, @Nullable Resource contours) {

  /** Files on disk. */
  public static RegisterFiles of(@Nullable Path register, @Nullable Path contours) {
    return new RegisterFiles(
        register == null ? null : new FileSystemResource(register),
        contours == null ? null : new FileSystemResource(contours));
  }

  /** True if there is nothing to import. */
  public boolean areMissing() {
    return register == null && contours == null;
  }

  static long bytes(Resource file) {
    try {
      return file.contentLength();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
