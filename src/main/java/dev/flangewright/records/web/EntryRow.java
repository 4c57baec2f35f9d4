package dev.flangewright.records.web;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** An entry of the journal as the page shows it. */
@JsonIgnoreProperties(ignoreUnknown = true)
record EntryRow(
    long seq,
    Instant at,
    String who,
    String done,
    String kind,
    String id,
    String label,
    @Nullable String part,
    List<FieldRow> changes) {

  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMM uuuu HH:mm:ss", Locale.ENGLISH).withZone(ZoneOffset.UTC);

  public String when() {
    return WHEN.format(at);
  }

  /** {@code "changed piece stage TW-F07-S3L, piece 1, cut"}. */
  public String what() {
    return Stream.of(done, kind, label.isEmpty() ? "number " + id : label)
        .collect(Collectors.joining(" "));
  }
}
