package dev.flangewright.bench;

import dev.flangewright.blocks.BlockKind;
import dev.flangewright.people.Clearance;
import dev.flangewright.people.Refused;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.Arrays;
import java.util.Optional;
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
 * @param needsBlock the name of the {@link BlockKind} that has to be ready; null if it needs none
 * @param blockStage which of a flange's stages of form blocks, counted from 1; null if there is
 *     one, and for kinds that serve every stage
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
  private static final int MOST_BLOCK_STAGES = 9;

  /**
   * @throws Refused if a text is too long or empty, the minutes or the stage of block out of range,
   *     there is no such kind of block, or the inspection would be held or done alongside something
   */
  public StageCard {
    name = Texts.of("name", name, 1, 80);
    String check = Texts.of("holdCheck", holdCheck == null ? "" : holdCheck, 0, 300);
    holdCheck = check.isEmpty() ? null : check;
    if (expectedMinutes != null && (expectedMinutes < 1 || expectedMinutes > MOST_MINUTES)) {
      throw Refused.unacceptable("expectedMinutes must be from 1 to " + MOST_MINUTES + ".");
    }
    needsBlock = needsBlock == null || needsBlock.isBlank() ? null : blockKind(needsBlock).name();
    if (blockStage != null && (blockStage < 1 || blockStage > MOST_BLOCK_STAGES)) {
      throw Refused.unacceptable("blockStage must be from 1 to " + MOST_BLOCK_STAGES + ".");
    }
    blockStage = needsBlock != null && blockKind(needsBlock).isStaged() ? blockStage : null;
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

  /** The block that has to be ready before it starts; empty if it needs none. */
  public Optional<BlockNeed> blockNeed() {
    return Optional.ofNullable(needsBlock)
        .map(name -> new BlockNeed(blockKind(name), blockStage == null ? 1 : blockStage));
  }

  private static BlockKind blockKind(String name) {
    return Arrays.stream(BlockKind.values())
        .filter(kind -> kind.name().equals(name))
        .findFirst()
        .orElseThrow(
            () -> Refused.unacceptable("needsBlock must be one of the kinds of block on offer."));
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
