package dev.flangewright.records;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A chain of invented entries, and what somebody may do to it behind the program's back. */
final class AJournal {

  static final Instant NOW = Instant.parse("2031-05-04T10:00:00Z");

  final List<Link> links = new ArrayList<>();

  /** As many entries, each by another hand; {@code tale} makes one history differ from another. */
  static AJournal of(int entries, String tale) {
    AJournal journal = new AJournal();
    for (int i = 1; i <= entries; i++) {
      journal.add(tale + " \"seq\":" + i);
    }
    return journal;
  }

  void add(String note) {
    Change change =
        new Change(
            NOW,
            "fitter",
            Change.CHANGED,
            "piece stage",
            "7",
            "TW-1, piece 1, cut",
            "TW-1",
            List.of(new FieldChange("note", null, note)));
    String line = new JournalEntry("build-1", links.size() + 1L, head(), change).line();
    links.add(new Link(line, Sha256.of(line), null));
  }

  String head() {
    return links.isEmpty() ? Sha256.NOTHING : Sha256.of(links.get(links.size() - 1).line());
  }

  Checkpoint checkpoint() {
    return new Checkpoint("build-1", links.size(), head(), NOW);
  }

  /** Changes an entry, with or without another hash beside it. */
  void edit(int seq, boolean andItsHash) {
    Link link = links.get(seq - 1);
    String line = link.line().replace("\"fitter\"", "\"lead\"");
    links.set(seq - 1, new Link(line, andItsHash ? Sha256.of(line) : link.hash(), null));
  }

  Verdict verdict(@Nullable Checkpoint old) {
    return VerifyJournal.of(links.iterator(), checkpoint(), old);
  }
}
