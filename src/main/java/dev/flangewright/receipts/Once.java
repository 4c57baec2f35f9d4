package dev.flangewright.receipts;

import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongSupplier;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Does what is asked once, however often it is sent. The receipt is stored in the transaction of
 * the work, and before it: of two that arrive at the same moment, the second waits at the unique
 * key and then finds the answer of the first. What is refused leaves no receipt and may be tried
 * again.
 */
@Service
public class Once {

  private final Receipts receipts;
  private final TransactionTemplate transaction;
  private final Clock clock;

  Once(Receipts receipts, TransactionTemplate transaction, Clock clock) {
    this.receipts = receipts;
    this.transaction = transaction;
    this.clock = clock;
  }

  /**
   * Does the work, unless the signed-in account has sent it before. What comes without a key is
   * simply done. Not to be called within a transaction: the loser of a race has to see what the
   * winner stored.
   *
   * @param subject what it is for: {@code "piece 12"}
   * @param work answers the number of what came of it
   * @return that number, of now or of the first time
   * @throws Refused if the key was used for something else, or whatever refuses the work
   */
  public long of(Ask ask, String subject, LongSupplier work) {
    UUID key = ask.key();
    if (key == null) {
      return work.getAsLong();
    }
    try {
      return Objects.requireNonNull(
          transaction.execute(
              status -> earlier(key, ask, subject).orElseGet(() -> now(key, ask, subject, work))));
    } catch (DataIntegrityViolationException lost) {
      return earlier(key, ask, subject).orElseThrow(() -> lost);
    }
  }

  private Optional<Long> earlier(UUID key, Ask ask, String subject) {
    Optional<Receipt> found = receipts.findByAccountAndEntryKey(SignedIn.name(), key.toString());
    found.ifPresent(receipt -> receipt.refuseUnlessFor(subject, ask.digest()));
    return found.map(Receipt::answer);
  }

  private long now(UUID key, Ask ask, String subject, LongSupplier work) {
    Receipt receipt =
        receipts.saveAndFlush(
            new Receipt(SignedIn.name(), key, subject, ask.digest(), clock.instant()));
    long answer = work.getAsLong();
    receipt.isAnsweredBy(answer);
    return answer;
  }
}
