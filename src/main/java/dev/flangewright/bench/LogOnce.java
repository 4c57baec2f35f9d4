package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Logs an entry once, however often it is sent. The receipt is stored in the transaction of the
 * entry, and before it: of two that arrive at the same moment, the second waits at the unique key
 * and then finds the answer of the first. A refused entry leaves no receipt and may be tried again.
 */
@Service
public class LogOnce {

  private final Receipts receipts;
  private final Pieces pieces;
  private final DoneAt doneAt;
  private final TransactionTemplate transaction;
  private final Clock clock;

  LogOnce(
      Receipts receipts,
      Pieces pieces,
      DoneAt doneAt,
      TransactionTemplate transaction,
      Clock clock) {
    this.receipts = receipts;
    this.pieces = pieces;
    this.doneAt = doneAt;
    this.transaction = transaction;
    this.clock = clock;
  }

  /**
   * Does the entry, unless the signed-in account has sent it before.
   *
   * @return the line of the piece's log that it is, now or since then; empty without a key
   * @throws Refused if the key was used for another entry, or whatever refuses the entry
   */
  public Optional<Integer> log(Ask ask, long pieceId, Runnable entry) {
    UUID key = ask.key();
    Runnable told = () -> doneAt.told(ask.doneAt(), entry);
    if (key == null) {
      told.run();
      return Optional.empty();
    }
    try {
      return transaction.execute(
          status -> earlier(key, ask, pieceId).or(() -> now(key, ask, pieceId, told)));
    } catch (DataIntegrityViolationException lost) {
      return Optional.of(earlier(key, ask, pieceId).orElseThrow(() -> lost));
    }
  }

  private Optional<Integer> earlier(UUID key, Ask ask, long pieceId) {
    Optional<Receipt> found = receipts.findByAccountAndEntryKey(SignedIn.name(), key.toString());
    found.ifPresent(receipt -> receipt.refuseUnlessFor(pieceId, ask.digest()));
    return found.map(Receipt::entryOrdinal);
  }

  private Optional<Integer> now(UUID key, Ask ask, long pieceId, Runnable entry) {
    Piece piece = pieces.findById(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    Receipt receipt =
        receipts.saveAndFlush(
            new Receipt(SignedIn.name(), key, pieceId, ask.digest(), clock.instant()));
    entry.run();
    receipt.isAnsweredBy(piece.log().size());
    return Optional.of(receipt.entryOrdinal());
  }
}
