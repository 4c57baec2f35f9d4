package dev.flangewright.blocks;

import dev.flangewright.parts.DrawingRefused;
import dev.flangewright.parts.Faults;
import dev.flangewright.people.MayKeepBlocks;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Adds blocks to a set, and keeps what is known of each. */
@Service
public class KeepBlocks {

  private final BlockSets sets;
  private final Blocks blocks;
  private final Clock clock;

  KeepBlocks(BlockSets sets, Blocks blocks, Clock clock) {
    this.sets = sets;
    this.blocks = blocks;
    this.clock = clock;
  }

  /**
   * @throws DrawingRefused if something written cannot be taken
   */
  @MayKeepBlocks
  @Transactional
  public Block add(long setId, BlockEntry written) {
    BlockSet set = sets.findById(setId).orElseThrow(() -> Refused.unknown("block set", setId));
    Faults faults = new Faults();
    BlockFacts facts = CheckBlocks.block(written, faults);
    BlockCondition condition = CheckBlocks.condition(written.condition(), faults);
    faults.refuseIfAny();
    return blocks.save(
        set.add(facts, condition, new Signed(SignedIn.name(), clock.instant(), "recorded")));
  }

  /**
   * Takes over what is written; the condition changes through {@link HandleBlock} alone.
   *
   * @throws DrawingRefused if something written cannot be taken
   * @throws Refused if somebody else changed the block since {@code version} was read
   */
  @MayKeepBlocks
  @Transactional
  public Block change(long id, long version, BlockEntry written) {
    Block block = blocks.findWithSetById(id).orElseThrow(() -> Refused.unknown("block", id));
    block.refuseIfStale(version);
    Faults faults = new Faults();
    BlockFacts facts = CheckBlocks.block(written, faults);
    faults.refuseIfAny();
    block.is(facts);
    return block;
  }
}
