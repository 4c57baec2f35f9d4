package dev.flangewright.records.archive;

import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * What an archive says of itself.
 *
 * @param format {@link #FORMAT}
 * @param formatVersion how the archive is laid out, {@link #FORMAT_VERSION} at most
 * @param program version of the program that wrote it
 * @param schema version of the last migration of the database
 * @param engine the database it was read from, with its version
 * @param made when it was read
 * @param tables in foreign-key order
 * @param sequences the next value of each
 * @param checkpoints where each chain of the journal stood; none before there was a journal
 */
public record Manifest(
    String format,
    int formatVersion,
    String program,
    String schema,
    String engine,
    Instant made,
    List<TableFile> tables,
    Map<String, Long> sequences,
    List<String> checkpoints) {

  static final String FORMAT = "flangewright archive";
  static final int FORMAT_VERSION = 1;

  /**
   * A table's file in the archive.
   *
   * @param contents digest of the rows whatever their order, see {@code Contents}
   * @param bytes size of the file when unpacked
   * @param sha256 of the file, 64 hexadecimal digits
   */
  public record TableFile(
      String table, String file, long rows, String contents, long bytes, String sha256) {}

  /** Rows of all tables together. */
  public long rows() {
    return tables.stream().mapToLong(TableFile::rows).sum();
  }
}
