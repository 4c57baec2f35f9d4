package dev.flangewright.records.archive;

import dev.flangewright.people.Refused;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipFile;

/** An archive that is whole: each of its files is there and has the digest that it should have. */
public final class Archive implements AutoCloseable {

  static final String MANIFEST = "manifest.json";
  static final String MANIFEST_DIGEST = "manifest.sha256";

  private final ZipFile zip;
  private final Manifest manifest;

  private Archive(ZipFile zip, Manifest manifest) {
    this.zip = zip;
    this.manifest = manifest;
  }

  static String fileOf(String table) {
    return "tables/" + table + ".jsonl";
  }

  /**
   * Reads the whole file and checks it.
   *
   * @throws Refused if it is no archive, or is damaged, with the reason
   */
  public static Archive open(Path file) {
    if (!Files.isRegularFile(file)) {
      throw Refused.unacceptable("There is no file " + file + ".");
    }
    ZipFile zip = unzip(file);
    try {
      return new Archive(zip, new CheckArchive(zip, Files.size(file)).manifest());
    } catch (IOException | RuntimeException refused) {
      closeQuietly(zip);
      throw refused instanceof RuntimeException runtime ? runtime : damaged((IOException) refused);
    }
  }

  private static ZipFile unzip(Path file) {
    try {
      return new ZipFile(file.toFile());
    } catch (IOException notWhole) {
      throw Refused.unacceptable(
          "This is not a whole zip file: it was cut short, or is something else.");
    }
  }

  static Refused damaged(IOException how) {
    return Refused.unacceptable("This archive is damaged: " + how.getMessage() + ".");
  }

  public Manifest manifest() {
    return manifest;
  }

  /** The rows of a table, a line each. */
  BufferedReader lines(Manifest.TableFile table) throws IOException {
    InputStream file = zip.getInputStream(zip.getEntry(table.file()));
    return new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8));
  }

  private static void closeQuietly(ZipFile zip) {
    try {
      zip.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    closeQuietly(zip);
  }
}
