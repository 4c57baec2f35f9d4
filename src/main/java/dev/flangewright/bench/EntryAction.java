package dev.flangewright.bench;

import dev.flangewright.people.Permission;
import java.util.function.Predicate;

/** What a line of a piece's log says. */
public enum EntryAction {
  START("started"),
  CHECK("checked"),
  FINISH("finished"),
  /** Answered one of the checks that the route asks for. */
  ANSWER("answered a check of"),
  /** Passed a check that was not met, with a note that says why. */
  LET_PASS("let a check pass at"),
  /** Put down later, or anew, which batch the piece was cut from. */
  SET_BATCH("put down the metal of"),
  UNDO("took back"),
  ACCEPT("accepted"),
  CONCEDE("accepted with a concession"),
  REWORK("sent back for rework"),
  SCRAP("scrapped");

  private final String word;

  EntryAction(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** An inspection's entries stay: a new inspection follows instead. */
  boolean canBeUndone() {
    return this != UNDO && !byInspection();
  }

  /** True for what an inspection decides. */
  public boolean byInspection() {
    return this == ACCEPT || this == CONCEDE || this == REWORK || this == SCRAP;
  }

  /** Whether somebody who may do these things may make such an entry, and take it back. */
  boolean isOpenTo(Predicate<Permission> may) {
    return switch (this) {
      case CHECK, LET_PASS -> may.test(Permission.RELEASE_HOLD);
      case SET_BATCH -> may.test(Permission.INSPECT);
      case ANSWER -> may.test(Permission.LOG_WORK) || may.test(Permission.RELEASE_HOLD);
      default -> may.test(Permission.LOG_WORK);
    };
  }
}
