package dev.flangewright.stock;

import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Changes the condition of a batch under the name of whoever is signed in. */
@Service
public class HandleBatch {

  private final Batches batches;
  private final Clock clock;

  HandleBatch(Batches batches, Clock clock) {
    this.batches = batches;
    this.clock = clock;
  }

  /**
   * @param seen the version of the batch that the person saw, or null
   * @param words who checked, or why; needed by some actions
   * @throws Refused if there is no such batch, its condition does not allow the action, the
   *     certificate or words are missing, or somebody else was quicker
   * @throws AccessDeniedException if the account may not do this
   */
  @PreAuthorize("hasAnyAuthority('KEEP_STOCK', 'INSPECT')")
  @Transactional
  public Batch by(long batchId, BatchAction action, @Nullable Long seen, String words) {
    if (!action.isOpenTo(SignedIn::may)) {
      throw new AccessDeniedException("This account may not " + action);
    }
    Batch batch =
        batches.findWholeById(batchId).orElseThrow(() -> Refused.unknown("batch", batchId));
    batch.refuseIfStale(seen);
    batch.happens(action, new Signed(SignedIn.name(), clock.instant(), words));
    return batch;
  }
}
