package dev.flangewright.testing;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds the browser of the machine; none is ever downloaded. */
public final class Chromium {

  static final String MISSING =
      "No Chromium was found: install the Debian package 'chromium',"
          + " or name the program in the environment variable CHROMIUM";

  private Chromium() {}

  /** The browser's program, or empty where there is none. */
  public static Optional<Path> find() {
    return find(System.getenv("CHROMIUM"), System.getenv("PATH"));
  }

  static Optional<Path> find(@Nullable String named, @Nullable String searchPath) {
    if (named != null && !named.isBlank()) {
      return Optional.of(Path.of(named)).filter(Files::isExecutable);
    }
    Stream<Path> onSearchPath =
        Stream.of((searchPath == null ? "" : searchPath).split(File.pathSeparator, -1))
            .filter(folder -> !folder.isBlank())
            .map(folder -> Path.of(folder, "google-chrome"));
    return Stream.concat(
            Stream.of(Path.of("/usr/bin/chromium"), Path.of("/usr/bin/chromium-browser")),
            onSearchPath)
        .filter(Files::isExecutable)
        .findFirst();
  }
}
