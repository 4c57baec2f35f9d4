package dev.flangewright.bench;

import dev.flangewright.people.Permission;
import java.util.function.Predicate;

/** What the person who asks may do, as far as the ranking cares. */
record Hands(boolean log, boolean scrap, boolean releaseHolds, boolean inspect) {

  static Hands of(Predicate<Permission> may) {
    return new Hands(
        may.test(Permission.LOG_WORK),
        may.test(Permission.SCRAP),
        may.test(Permission.RELEASE_HOLD),
        may.test(Permission.INSPECT));
  }

  /** Forms metal and answers for it: the lead. */
  boolean lead() {
    return log && inspect;
  }

  /** Forms metal, but has others decide whether it is lost: a volunteer. */
  boolean learn() {
    return log && !scrap;
  }
}
