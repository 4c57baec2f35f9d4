package dev.flangewright.records;

import dev.flangewright.records.Verdict.Broken;
import dev.flangewright.records.Verdict.Old;
import java.util.Iterator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Looks through a chain, link by link, up to the first that does not fit. A chain that was cut off
 * at its end, or written anew from some entry on, fits together all the same: only a checkpoint
 * that was kept elsewhere shows that.
 */
public final class VerifyJournal {

  private final String chain;
  private final @Nullable Checkpoint old;
  private long count;
  private String head = Sha256.NOTHING;
  private @Nullable Old became;

  private VerifyJournal(String chain, @Nullable Checkpoint old) {
    this.chain = chain;
    this.old = old;
  }

  /**
   * @param links in their order
   * @param claimed where the chain is said to stand: beyond it nothing is looked at
   * @param old a checkpoint taken before; null if there is none
   */
  public static Verdict of(Iterator<Link> links, Checkpoint claimed, @Nullable Checkpoint old) {
    return new VerifyJournal(claimed.chain(), old).walk(links, claimed);
  }

  private Verdict walk(Iterator<Link> links, Checkpoint claimed) {
    if (old != null && !old.chain().equals(chain)) {
      became = Old.OF_ANOTHER_CHAIN;
    }
    lookForOld();
    while (links.hasNext() && count < claimed.count()) {
      Optional<Broken> broken = next(links.next());
      if (broken.isPresent()) {
        return verdict(broken.get());
      }
    }
    if (old != null && became == null) {
      became = Old.SHORTER;
    }
    return verdict(end(claimed));
  }

  private Verdict verdict(@Nullable Broken broken) {
    return new Verdict(chain, count, head, broken, became);
  }

  private Optional<Broken> next(Link link) {
    Optional<JournalLine> line = JournalLine.read(link.line());
    String wrong = line.map(read -> wrong(read, link)).orElse("is no entry of a journal");
    if (!wrong.isEmpty()) {
      return Optional.of(new Broken(count + 1, wrong));
    }
    count++;
    head = line.orElseThrow().hash();
    lookForOld();
    return Optional.empty();
  }

  /** Empty if the link fits. */
  private String wrong(JournalLine line, Link link) {
    if (link.hash() != null && !link.hash().equals(line.hash())) {
      return "was changed after it was written: its hash does not fit";
    }
    if (!line.chain().equals(chain)) {
      return "belongs to the chain " + line.chain();
    }
    if (line.seq() > count + 1) {
      return "is missing: entry " + line.seq() + " comes next";
    }
    if (line.seq() <= count) {
      return "is out of order: entry " + line.seq() + " stands in its place";
    }
    if (!line.previous().equals(head)) {
      return "does not follow from the entry before it: the previous hash does not fit";
    }
    return link.misfit() == null ? "" : link.misfit();
  }

  private void lookForOld() {
    if (old != null && became == null && old.count() == count) {
      became = old.head().equals(head) ? Old.CONTAINED : Old.REWRITTEN;
    }
  }

  private @Nullable Broken end(Checkpoint claimed) {
    if (count < claimed.count()) {
      return new Broken(count + 1, "is missing: there should be " + claimed.count());
    }
    return head.equals(claimed.head())
        ? null
        : new Broken(count, "is not the one that the chain is said to end with");
  }
}
