package dev.flangewright.parts.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.core.io.Resource;
import org.springframework.stereotype.Component;
import org.springframework.util.FileSystemUtils;

/** Where uploaded files wait; emptied at start-up, for a job does not outlive the program. */
@Component
class ImportFolder {

  private final Path root;

  ImportFolder(Environment environment, @Value("${flangewright.data}") Path data) {
    boolean demo = environment.acceptsProfiles(Profiles.of("demo"));
    this.root = demo ? temporary() : data.resolve("imports");
    if (Files.isDirectory(root)) {
      try (Stream<Path> left = Files.list(root)) {
        left.forEach(ImportFolder::delete);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  Path newFolder(String job) throws IOException {
    return Files.createDirectories(root.resolve(job));
  }

  /** The stored file; null if there is none to store. */
  static @Nullable Path store(@Nullable Resource upload, Path folder, CsvFile file)
      throws IOException {
    if (upload == null) {
      return null;
    }
    Path stored = folder.resolve(file.fileName());
    try (var in = upload.getInputStream()) {
      Files.copy(in, stored);
    }
    return stored;
  }

  static void delete(Path folder) {
    try {
      FileSystemUtils.deleteRecursively(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The demo keeps nothing, so its uploads go where the system clears up. */
  private static Path temporary() {
    try {
      return Files.createTempDirectory("flangewright-imports");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
