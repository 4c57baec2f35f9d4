package dev.flangewright.records;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;

/** One chain, opened for somebody who may read it. */
public final class Journal {

  static final int ON_A_PAGE = 50;

  private final String chain;
  private final Checkpoints checkpoints;
  private final CheckJournal check;
  private final FindEntries find;
  private final ReadJournal read;

  Journal(
      String chain,
      Checkpoints checkpoints,
      CheckJournal check,
      FindEntries find,
      ReadJournal read) {
    this.chain = chain;
    this.checkpoints = checkpoints;
    this.check = check;
    this.find = find;
    this.read = read;
  }

  public String chain() {
    return chain;
  }

  /** Where it stands now. */
  public Checkpoint checkpoint() {
    return checkpoints.of(chain);
  }

  /**
   * @param before only entries of a smaller number
   */
  public JournalPage page(JournalFilter filter, long before) {
    return JournalPage.of(find.lines(chain, filter, before, ON_A_PAGE + 1), ON_A_PAGE);
  }

  /**
   * @param old a checkpoint taken before; null if there is none
   */
  public Verdict verify(@Nullable Checkpoint old) {
    return check.of(chain, old);
  }

  /** One entry a line, and the checkpoint at which it ends as the last line. */
  public void export(OutputStream out) throws IOException {
    Checkpoint end = checkpoint();
    Iterator<Link> links = read.of(chain);
    for (long written = 0; written < end.count() && links.hasNext(); written++) {
      write(out, links.next().line());
    }
    write(out, end.line());
  }

  private static void write(OutputStream out, String line) throws IOException {
    out.write((line + "\n").getBytes(StandardCharsets.UTF_8));
  }
}
