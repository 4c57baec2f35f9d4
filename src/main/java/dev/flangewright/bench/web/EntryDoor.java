package dev.flangewright.bench.web;

import dev.flangewright.bench.LogOnce;
import dev.flangewright.receipts.Once;
import dev.flangewright.receipts.SentForm;
import java.time.Instant;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.springframework.stereotype.Component;

/** Where what was entered in a form of the bench comes in: once, however often it is sent. */
@Component
class EntryDoor {

  private final LogOnce log;
  private final Once once;
  private final SentForm form;

  EntryDoor(LogOnce log, Once once, SentForm form) {
    this.log = log;
    this.once = once;
    this.form = form;
  }

  void through(long pieceId, Runnable entry) {
    log.log(form.ask(), pieceId, entry);
  }

  /**
   * @param work answers the number of what came of it
   * @return that number, of now or of the first time
   */
  long toPiece(long pieceId, LongSupplier work) {
    return once.of(form.ask(), "piece " + pieceId, work);
  }

  /** As {@link #toPiece}, for what is done with a part. */
  long toPart(long partId, LongSupplier work) {
    return once.of(form.ask(), "part " + partId, work);
  }

  /** When an entry that is sent later was made; empty for one that is made now. */
  Optional<Instant> madeAt() {
    return Optional.ofNullable(form.ask().doneAt());
  }

  /** An entry that was sent later has no page to come back to: it is told the problem. */
  void throwIfSentLater(RuntimeException refused) {
    form.throwIfSentLater(refused);
  }
}
