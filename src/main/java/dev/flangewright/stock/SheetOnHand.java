package dev.flangewright.stock;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Tells the bench which sheet may be cut. Only what is recorded stands in the way: a build that
 * records no batch of a metal cuts it as it always did.
 */
@Service
public class SheetOnHand {

  private final Batches batches;

  SheetOnHand(Batches batches) {
    this.batches = batches;
  }

  /** Every batch of a build: one statement, however many. */
  @Transactional(readOnly = true)
  public SheetsOfBuild ofBuild(long buildId) {
    return new SheetsOfBuild(batches.ofBuild(buildId));
  }
}
