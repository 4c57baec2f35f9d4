package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import dev.flangewright.receipts.Ask;
import dev.flangewright.receipts.Once;
import org.springframework.stereotype.Service;

/** Logs an entry on a piece once, however often it is sent, as done at the time told. */
@Service
public class LogOnce {

  private final Once once;
  private final DoneAt doneAt;

  LogOnce(Once once, DoneAt doneAt) {
    this.once = once;
    this.doneAt = doneAt;
  }

  /**
   * Does the entry, unless the signed-in account has sent it before.
   *
   * @throws Refused if the key was used for another entry, or whatever refuses the entry
   */
  public void log(Ask ask, long pieceId, Runnable entry) {
    long unused =
        once.of(
            ask,
            "piece " + pieceId,
            () -> {
              doneAt.told(ask.doneAt(), entry);
              return pieceId;
            });
  }
}
