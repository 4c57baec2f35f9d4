package dev.flangewright.records.archive;

import dev.flangewright.people.Refused;
import dev.flangewright.records.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Checks a file from end to end before anything is done with it. */
final class CheckArchive {

  private static final Pattern NAME = Pattern.compile("tables/[a-z0-9_]{1,63}\\.jsonl");
  private static final int MOST_FILES = 1000;
  private static final int LONGEST_MANIFEST = 4 * 1024 * 1024;

  /**
   * Rows of a workshop pack to a tenth or so; a file made to flood a disk packs to a thousandth.
   */
  private static final long MOST_UNPACKED = 200;

  private static final long UNPACKED_ANYWAY = 16L * 1024 * 1024;

  private final ZipFile zip;
  private final long packedBytes;

  CheckArchive(ZipFile zip, long packedBytes) {
    this.zip = zip;
    this.packedBytes = packedBytes;
  }

  /**
   * @return the manifest, if everything it names is there and right
   * @throws Refused otherwise
   */
  Manifest manifest() throws IOException {
    refuseForeignNames();
    byte[] written = small(Archive.MANIFEST);
    String digest = new String(small(Archive.MANIFEST_DIGEST), StandardCharsets.US_ASCII);
    require(digest.equals(Sha256.of(written)), "The manifest of this archive was changed.");
    Manifest manifest = ManifestText.read(written);
    refuseMissingFiles(manifest);
    refuseFlood(manifest);
    for (Manifest.TableFile file : manifest.tables()) {
      check(file);
    }
    return manifest;
  }

  private void refuseForeignNames() {
    require(zip.size() <= MOST_FILES, "This zip file is not an archive of Flangewright.");
    Set<String> names = new HashSet<>();
    for (ZipEntry entry : zip.stream().map(ZipEntry.class::cast).toList()) {
      String name = entry.getName();
      boolean known =
          name.equals(Archive.MANIFEST)
              || name.equals(Archive.MANIFEST_DIGEST)
              || NAME.matcher(name).matches();
      require(known && names.add(name), "This zip file is not an archive of Flangewright.");
    }
    require(
        names.contains(Archive.MANIFEST) && names.contains(Archive.MANIFEST_DIGEST),
        "This zip file is not an archive of Flangewright: it has no manifest.");
  }

  private byte[] small(String name) throws IOException {
    try (InputStream file = zip.getInputStream(zip.getEntry(name))) {
      byte[] content = file.readNBytes(LONGEST_MANIFEST + 1);
      require(content.length <= LONGEST_MANIFEST, "The manifest of this archive is too long.");
      return content;
    }
  }

  private void refuseMissingFiles(Manifest manifest) {
    Set<String> named =
        manifest.tables().stream().map(Manifest.TableFile::file).collect(Collectors.toSet());
    require(
        named.size() == manifest.tables().size() && named.size() + 2 == zip.size(),
        "The files in this archive are not those that its manifest names.");
    for (Manifest.TableFile table : manifest.tables()) {
      require(
          table.file().equals(Archive.fileOf(table.table())) && zip.getEntry(table.file()) != null,
          "The table %s is missing in this archive.".formatted(table.table()));
    }
  }

  private void refuseFlood(Manifest manifest) {
    long most = packedBytes * MOST_UNPACKED + UNPACKED_ANYWAY;
    long unpacked = 0;
    for (Manifest.TableFile file : manifest.tables()) {
      require(file.bytes() >= 0 && file.bytes() <= most, "This archive unpacks to too much.");
      unpacked += file.bytes();
    }
    require(unpacked <= most, "This archive unpacks to too much.");
  }

  /** Reads no further than the manifest says the file is long. */
  private void check(Manifest.TableFile table) throws IOException {
    MessageDigest sha256 = Sha256.digest();
    byte[] piece = new byte[64 * 1024];
    long left = table.bytes();
    try (InputStream file = zip.getInputStream(zip.getEntry(table.file()))) {
      for (int read = file.read(piece); read >= 0 && left >= 0; read = file.read(piece)) {
        sha256.update(piece, 0, read);
        left -= read;
      }
    }
    require(
        left == 0 && HexFormat.of().formatHex(sha256.digest()).equals(table.sha256()),
        "The table %s in this archive was changed or damaged.".formatted(table.table()));
  }

  private static void require(boolean right, String otherwise) {
    if (!right) {
      throw Refused.unacceptable(otherwise);
    }
  }
}
