package dev.flangewright.blocks;

import dev.flangewright.parts.Build;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.DrawingRefused;
import dev.flangewright.parts.Faults;
import dev.flangewright.people.MayKeepBlocks;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Records block sets, and what is known of them. */
@Service
public class KeepBlockSets {

  private final Builds builds;
  private final BlockSets sets;

  KeepBlockSets(Builds builds, BlockSets sets) {
    this.builds = builds;
    this.sets = sets;
  }

  /**
   * @throws DrawingRefused if something written cannot be taken
   * @throws Refused if the build has a set of that code already
   */
  @MayKeepBlocks
  @Transactional
  public BlockSet record(long buildId, BlockSetEntry written) {
    Build build = builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId));
    Faults faults = new Faults();
    faults.text("code", written.code(), 60);
    BlockSetFacts facts = CheckBlocks.set(written, faults);
    faults.refuseIfAny();
    if (sets.findByBuildIdAndCode(buildId, written.code()).isPresent()) {
      throw Refused.conflict(
          "There is already a block set \"" + written.code() + "\" in this build.");
    }
    return sets.save(new BlockSet(build, written.code(), facts));
  }

  /**
   * The set keeps its code, by which parts name it.
   *
   * @throws DrawingRefused if something written cannot be taken
   * @throws Refused if somebody else changed the set since {@code version} was read
   */
  @MayKeepBlocks
  @Transactional
  public void change(long id, long version, BlockSetEntry written) {
    BlockSet set = sets.findById(id).orElseThrow(() -> Refused.unknown("block set", id));
    if (set.version() != version) {
      throw Refused.conflict("Somebody changed this block set in the meantime.");
    }
    Faults faults = new Faults();
    BlockSetFacts facts = CheckBlocks.set(written, faults);
    faults.refuseIfAny();
    set.is(facts);
  }
}
