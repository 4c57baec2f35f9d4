package dev.flangewright.stock;

import static dev.flangewright.stock.BatchCondition.HELD_BACK;
import static dev.flangewright.stock.BatchCondition.RECEIVED;
import static dev.flangewright.stock.BatchCondition.RELEASED;
import static dev.flangewright.stock.BatchCondition.USED_UP;

import dev.flangewright.people.Permission;
import dev.flangewright.people.Refused;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Predicate;

/** What may happen to a batch: from which conditions, into which, and by whom. */
public enum BatchAction {
  RELEASE(
      "released",
      EnumSet.of(RECEIVED),
      RELEASED,
      EnumSet.of(Permission.INSPECT),
      "say who checked the certificate against the sheet"),
  /** A used-up batch too: its pieces are what a recalled cast is sought for. */
  HOLD_BACK(
      "held back",
      EnumSet.of(RECEIVED, RELEASED, USED_UP),
      HELD_BACK,
      EnumSet.of(Permission.KEEP_STOCK, Permission.INSPECT),
      "say why nothing may be cut from it"),
  TAKE_BACK(
      "taken back to released",
      EnumSet.of(HELD_BACK, USED_UP),
      RELEASED,
      EnumSet.of(Permission.INSPECT),
      "say who checked it and why it may be used"),
  USE_UP("used up", EnumSet.of(RELEASED), USED_UP, EnumSet.of(Permission.KEEP_STOCK), "");

  private final String done;
  private final Set<BatchCondition> from;
  private final BatchCondition to;
  private final Set<Permission> permissions;
  private final String asked;

  BatchAction(
      String done,
      Set<BatchCondition> from,
      BatchCondition to,
      Set<Permission> permissions,
      String asked) {
    this.done = done;
    this.from = from;
    this.to = to;
    this.permissions = permissions;
    this.asked = asked;
  }

  /** Whether a batch in that condition allows it. */
  public boolean isOpenTo(BatchCondition condition) {
    return from.contains(condition);
  }

  /** Whether somebody who may do these things may do it: one of its permissions is enough. */
  public boolean isOpenTo(Predicate<Permission> may) {
    return permissions.stream().anyMatch(may);
  }

  /** Whether it is refused without words. */
  public boolean needsWords() {
    return !asked.isEmpty();
  }

  /** Whether metal may be cut afterwards; only a batch with a certificate comes so far. */
  boolean frees() {
    return to.mayBeCut();
  }

  /**
   * The condition of a batch afterwards.
   *
   * @param mark of the batch, for the refusal
   * @throws Refused if the condition does not allow it, or the words are missing
   */
  BatchCondition of(BatchCondition condition, String mark, Signed by) {
    if (!isOpenTo(condition)) {
      throw Refused.conflict("%s cannot be %s: it %s.".formatted(mark, done, condition.sentence()));
    }
    if (needsWords() && by.words().isEmpty()) {
      throw Refused.unacceptable("words is missing: " + asked + ".");
    }
    return to;
  }
}
