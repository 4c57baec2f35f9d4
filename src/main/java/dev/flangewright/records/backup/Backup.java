package dev.flangewright.records.backup;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An archive in the folder of backups. Its name says all that there is to know of it without
 * opening it: {@code flangewright-20260602T023000Z-nightly.zip}, with {@code .failed} behind it if
 * it could not be restored beside the live data.
 */
public record Backup(Path file, Instant made, Occasion occasion, boolean verified, long bytes) {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

  private static final Pattern NAME =
      Pattern.compile("flangewright-(\\d{8}T\\d{6}Z)-([a-z]+)\\.zip(\\.failed)?");

  static String name(Instant made, Occasion occasion) {
    return "flangewright-%s-%s.zip".formatted(TIME.format(made), occasion.inName());
  }

  /** Empty for any other file. */
  static Optional<Backup> of(Path file, long bytes) {
    Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
    if (!name.matches()) {
      return Optional.empty();
    }
    return Arrays.stream(Occasion.values())
        .filter(occasion -> occasion.inName().equals(name.group(2)))
        .findFirst()
        .map(
            occasion ->
                new Backup(
                    file,
                    TIME.parse(name.group(1), Instant::from),
                    occasion,
                    name.group(3) == null,
                    bytes));
  }

  public String name() {
    return String.valueOf(file.getFileName());
  }
}
