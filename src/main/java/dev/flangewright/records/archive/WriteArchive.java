package dev.flangewright.records.archive;

import dev.flangewright.records.Sha256;
import java.io.BufferedOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;

/** Writes every table of a database into one file, as it is at one moment. */
public final class WriteArchive {

  private final Instant made;
  private final ZipOutputStream zip;

  private WriteArchive(Instant made, ZipOutputStream zip) {
    this.made = made;
    this.zip = zip;
  }

  /**
   * Writes the archive and hands it to the disk before it returns. People may go on working; what
   * they do meanwhile is in the archive as a whole or not at all.
   *
   * @param made the time that the archive bears
   * @param file not there yet
   * @throws UncheckedIOException if it cannot be written, for example for want of space
   */
  public static Manifest of(DataSource source, Instant made, Path file) {
    try (FileOutputStream disk = new FileOutputStream(file.toFile());
        ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(disk))) {
      Manifest manifest = Snapshot.of(source, from -> new WriteArchive(made, zip).all(from));
      zip.finish();
      zip.flush();
      disk.getFD().sync();
      return manifest;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (SQLException e) {
      throw new IllegalStateException("The database could not be read: " + e.getMessage(), e);
    }
  }

  private Manifest all(Connection from) throws SQLException {
    try {
      List<Manifest.TableFile> files = new ArrayList<>();
      List<Table> tables = Tables.of(from);
      for (Table table : tables) {
        files.add(write(table, from));
      }
      Manifest manifest =
          new Manifest(
              Manifest.FORMAT,
              Manifest.FORMAT_VERSION,
              Program.version(),
              Migrations.version(from),
              from.getMetaData().getDatabaseProductName()
                  + " "
                  + from.getMetaData().getDatabaseProductVersion(),
              made,
              files,
              Sequences.positions(from),
              JournalHeads.of(from, tables, made));
      byte[] written = ManifestText.of(manifest);
      write(Archive.MANIFEST, written);
      write(Archive.MANIFEST_DIGEST, Sha256.of(written).getBytes(StandardCharsets.US_ASCII));
      return manifest;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Manifest.TableFile write(Table table, Connection from) throws SQLException, IOException {
    String file = Archive.fileOf(table.name());
    begin(file);
    MessageDigest sha256 = Sha256.digest();
    AtomicLong bytes = new AtomicLong();
    DigestOutputStream to = new DigestOutputStream(zip, sha256);
    Contents contents =
        ReadTable.into(
            line -> {
              byte[] written = (line + "\n").getBytes(StandardCharsets.UTF_8);
              to.write(written);
              bytes.addAndGet(written.length);
            },
            table,
            from);
    zip.closeEntry();
    return new Manifest.TableFile(
        table.name(),
        file,
        contents.rows(),
        contents.digest(),
        bytes.get(),
        HexFormat.of().formatHex(sha256.digest()));
  }

  private void write(String name, byte[] content) throws IOException {
    begin(name);
    zip.write(content);
    zip.closeEntry();
  }

  private void begin(String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(made.toEpochMilli());
    zip.putNextEntry(entry);
  }
}
