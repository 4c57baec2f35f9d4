package dev.flangewright.records;

import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What links an entry's line to the others. It is read without a JSON library: in the canonical
 * form the members stand in a fixed order, and a quote within a text is never without its
 * backslash.
 */
public record JournalLine(String chain, long seq, String previous, String hash) {

  private static final Pattern MEMBERS =
      Pattern.compile(
          "\\{\"at\":\"[^\"]+\",\"chain\":\"([a-z0-9-]+)\",\"changes\":\\[.*\\],\"done\":\"[a-z]+\","
              + ".*,\"previous\":\"([0-9a-f]{64})\",\"seq\":([1-9][0-9]{0,17}),\"who\":\".*\"\\}",
          Pattern.DOTALL);

  /** Empty if it is no line of a journal. */
  public static Optional<JournalLine> read(String line) {
    Matcher members = MEMBERS.matcher(line);
    return members.matches()
        ? Optional.of(
            new JournalLine(
                members.group(1),
                Long.parseLong(members.group(3)),
                members.group(2),
                Sha256.of(line)))
        : Optional.empty();
  }

  /** Whether a line says these things, so that columns beside it can be held against it. */
  static boolean says(String line, Instant at, String who, @Nullable String part) {
    return line.startsWith("{\"at\":" + CanonicalJson.of(at.toString()) + ",")
        && line.endsWith(",\"who\":" + CanonicalJson.of(who) + "}")
        && line.contains(",\"part\":" + CanonicalJson.of(part) + ",\"previous\":\"");
  }
}
