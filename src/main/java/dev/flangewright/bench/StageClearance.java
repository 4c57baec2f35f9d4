package dev.flangewright.bench;

import dev.flangewright.people.Clearance;
import dev.flangewright.people.SignedIn;
import dev.flangewright.people.WhoIsCleared;
import org.springframework.stereotype.Component;

/** Lets only those work on a stage who are cleared for it. */
@Component
public class StageClearance {

  private final WhoIsCleared cleared;

  StageClearance(WhoIsCleared cleared) {
    this.cleared = cleared;
  }

  /** Whether whoever is signed in may work on the stage. */
  public boolean holds(PieceStage stage) {
    Clearance needed = stage.clearance();
    return needed == null || SignedIn.isCleared(needed);
  }

  /**
   * @throws StageRefusal naming those who are cleared, if whoever is signed in is not
   */
  public void refuseUnlessHeld(PieceStage stage) {
    Clearance needed = stage.clearance();
    if (needed != null && !holds(stage)) {
      throw StageRefusal.notCleared(stage, needed, cleared.namesFor(needed));
    }
  }
}
