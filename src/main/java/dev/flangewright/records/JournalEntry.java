package dev.flangewright.records;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A change at its place in a chain.
 *
 * @param seq its number in the chain, from 1
 * @param previous the hash of the entry before it; {@link Sha256#NOTHING} for the first
 */
public record JournalEntry(String chain, long seq, String previous, Change change) {

  /** The canonical line whose bytes in UTF-8 are hashed; {@code docs/records.md} describes it. */
  public String line() {
    Map<String, @Nullable Object> members = new HashMap<>();
    members.put("at", change.at().toString());
    members.put("chain", chain);
    members.put("changes", change.changes().stream().map(FieldChange::members).toList());
    members.put("done", change.done());
    members.put("id", change.id());
    members.put("kind", change.kind());
    members.put("label", change.label());
    members.put("part", change.part());
    members.put("previous", previous);
    members.put("seq", seq);
    members.put("who", change.who());
    return CanonicalJson.of(members);
  }
}
