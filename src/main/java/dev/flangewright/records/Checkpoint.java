package dev.flangewright.records;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where a chain stood at some time. Kept elsewhere, it shows later whether the history of that time
 * is still in the journal.
 *
 * @param count entries there were
 * @param head the hash of the last of them; {@link Sha256#NOTHING} if there was none
 * @param at when it was taken
 */
public record Checkpoint(String chain, long count, String head, Instant at) {

  private static final Pattern TEXT =
      Pattern.compile(
          "checkpoint\\s+([a-z0-9-]+)\\s+([0-9]{1,18})\\s+([0-9a-f\\s]{64,160}?)\\s+(\\d{4}-\\S+Z)");

  private static final Pattern LINE =
      Pattern.compile(
          "\\{\"checkpoint\":\\{\"at\":\"([^\"]+)\",\"chain\":\"([a-z0-9-]+)\","
              + "\"count\":([0-9]{1,18}),\"head\":\"([0-9a-f]{64})\"\\}\\}");

  /** One line to copy, print and paste: {@code checkpoint build-1 42 <hash> <time>}. */
  public String text() {
    return "checkpoint " + chain + " " + count + " " + head + " " + at;
  }

  /** Of {@link #text()}, also with other blanks and line breaks; empty if it is none. */
  public static Optional<Checkpoint> read(String text) {
    Matcher found = TEXT.matcher(text.strip());
    if (!found.matches()) {
      return Optional.empty();
    }
    String head = found.group(3).replaceAll("\\s", "");
    return head.length() == 64
        ? of(found.group(1), found.group(2), head, found.group(4))
        : Optional.empty();
  }

  /** Of {@link #line()}; empty if it is none. */
  static Optional<Checkpoint> readLine(String line) {
    Matcher found = LINE.matcher(line);
    return found.matches()
        ? of(found.group(2), found.group(3), found.group(4), found.group(1))
        : Optional.empty();
  }

  private static Optional<Checkpoint> of(String chain, String count, String head, String at) {
    try {
      return Optional.of(new Checkpoint(chain, Long.parseLong(count), head, Instant.parse(at)));
    } catch (DateTimeException noTime) {
      return Optional.empty();
    }
  }

  /** The canonical line that ends an exported journal. */
  public String line() {
    Map<String, @Nullable Object> members = new HashMap<>();
    members.put("at", at.toString());
    members.put("chain", chain);
    members.put("count", count);
    members.put("head", head);
    return CanonicalJson.of(Map.of("checkpoint", members));
  }
}
