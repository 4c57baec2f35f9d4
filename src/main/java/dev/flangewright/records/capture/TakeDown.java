package dev.flangewright.records.capture;

import dev.flangewright.people.SignedIn;
import dev.flangewright.records.Change;
import dev.flangewright.records.FieldChange;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentHashMap;
import org.hibernate.engine.spi.SharedSessionContractImplementor;
import org.hibernate.engine.spi.TransactionCompletionCallbacks;
import org.hibernate.persister.entity.EntityPersister;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Takes changes down as they are written, and hands them to the journal when the transaction is
 * about to be committed: a journal entry is in the database exactly if its change is. The heads of
 * the chains are locked last, and only for as long as it takes to write the entries.
 */
@Component
class TakeDown {

  private final Clock clock;
  private final Map<SharedSessionContractImplementor, ChangesOfTransaction> open =
      new ConcurrentHashMap<>();

  TakeDown(Clock clock) {
    this.clock = clock;
  }

  void change(
      SharedSessionContractImplementor session,
      EntityPersister rows,
      Object row,
      Object id,
      String done,
      List<FieldChange> changes) {
    if (changes.isEmpty() && done.equals(Change.CHANGED)) {
      return;
    }
    Names names = new Names(session);
    @Nullable Whereabouts place = new FindWhereabouts(names, names::loaded).of(row).orElse(null);
    of(session)
        .add(
            new Taken(
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                SignedIn.nameOrSystem(),
                done,
                names.kind(rows),
                id.toString(),
                changes,
                place,
                place == null ? row : null));
  }

  private ChangesOfTransaction of(SharedSessionContractImplementor session) {
    return open.computeIfAbsent(session, this::begin);
  }

  private ChangesOfTransaction begin(SharedSessionContractImplementor session) {
    TransactionCompletionCallbacks transaction = session.getTransactionCompletionCallbacks();
    transaction.registerCallback(
        (TransactionCompletionCallbacks.BeforeCompletionCallback) this::write);
    transaction.registerCallback(
        (TransactionCompletionCallbacks.AfterCompletionCallback)
            (committed, ended) -> open.remove(ended));
    return new ChangesOfTransaction();
  }

  private void write(SharedSessionContractImplementor session) {
    ChangesOfTransaction changes = open.remove(session);
    if (changes != null) {
      SortedMap<String, List<Change>> chains = changes.byChain(session);
      new WriteEntries(session).write(chains);
    }
  }
}
