package dev.flangewright.bench;

import dev.flangewright.people.Clearance;
import dev.flangewright.people.Refused;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/**
 * What the route card says of one stage; a piece takes a copy of it.
 *
 * @param holdCheck what must be checked before the stage can be passed; null if it is no hold point
 * @param clearance what somebody must be cleared for to start and to finish it; null if anybody who
 *     logs work may
 * @param expectedMinutes how long it should take; null if nobody knows
 * @param alongside it may be done at the same time as the neighbours that may too; otherwise it
 *     comes strictly after the stage before it
 * @param needsBlock the kind of block that has to be ready; null if it needs none
 * @param blockStage which of several sets of blocks, counted from 1; null if there is one
 */
@Embeddable
public record StageCard(
    String name,
    @Enumerated(EnumType.STRING) @JdbcTypeCode(SqlTypes.VARCHAR) StageKind kind,
    @Nullable String holdCheck,
    @Enumerated(EnumType.STRING) @JdbcTypeCode(SqlTypes.VARCHAR) @Nullable Clearance clearance,
    @Nullable Integer expectedMinutes,
    boolean alongside,
    @Nullable String needsBlock,
    @Nullable Integer blockStage) {

  private static final int MOST_MINUTES = 60_000;

  /**
   * @throws Refused if a text is too long or empty, the minutes out of range, or the inspection
   *     would be held or done alongside something
   */
  public StageCard {
    name = Texts.of("name", name, 1, 80);
    String check = Texts.of("holdCheck", holdCheck == null ? "" : holdCheck, 0, 300);
    holdCheck = check.isEmpty() ? null : check;
    if (expectedMinutes != null && (expectedMinutes < 1 || expectedMinutes > MOST_MINUTES)) {
      throw Refused.unacceptable("expectedMinutes must be from 1 to " + MOST_MINUTES + ".");
    }
    if (kind.byInspection() && (holdCheck != null || alongside)) {
      throw Refused.unacceptable(
          "The inspection is itself the check and comes after everything else: it takes no hold"
              + " check and is not done alongside anything.");
    }
  }

  /** A stage in strict order that anybody may do. */
  public StageCard(String name, StageKind kind) {
    this(name, kind, null, null, null, false, null, null);
  }

  StageCard heldFor(String check) {
    return new StageCard(
        name, kind, check, clearance, expectedMinutes, alongside, needsBlock, blockStage);
  }

  StageCard clearedFor(Clearance needed) {
    return new StageCard(
        name, kind, holdCheck, needed, expectedMinutes, alongside, needsBlock, blockStage);
  }

  StageCard over(String block) {
    return new StageCard(
        name, kind, holdCheck, clearance, expectedMinutes, alongside, block, blockStage);
  }
}
