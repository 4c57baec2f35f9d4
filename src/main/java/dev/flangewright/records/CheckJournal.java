package dev.flangewright.records;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Verifies the journal in the database. */
@Service
public class CheckJournal {

  private final Checkpoints checkpoints;
  private final ReadJournal journal;

  CheckJournal(Checkpoints checkpoints, ReadJournal journal) {
    this.checkpoints = checkpoints;
    this.journal = journal;
  }

  /**
   * The head is read first, so that entries which are added meanwhile are not missed in it.
   *
   * @param old a checkpoint taken before; null if there is none
   */
  @Transactional(readOnly = true)
  public Verdict of(String chain, @Nullable Checkpoint old) {
    Checkpoint now = checkpoints.of(chain);
    return VerifyJournal.of(journal.of(chain), now, old);
  }
}
