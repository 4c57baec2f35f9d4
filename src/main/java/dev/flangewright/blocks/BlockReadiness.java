package dev.flangewright.blocks;

import dev.flangewright.parts.Part;
import dev.flangewright.people.MayLogWork;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.util.Comparator;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Tells the bench whether the block that a stage needs is ready, and takes word of damage from it.
 *
 * <p>A block is ready for work when it is in condition {@link BlockCondition#READY} or {@link
 * BlockCondition#IN_USE}: whoever starts a stage may have taken it from the shelf first. Of several
 * blocks of one kind and stage one that is ready is enough. Only what is recorded stands in the
 * way: a part that names no set, a set that nobody has recorded, and a kind or stage of which the
 * set has no block are never reported as not ready.
 */
@Service
public class BlockReadiness {

  private final Blocks blocks;
  private final Clock clock;

  BlockReadiness(Blocks blocks, Clock clock) {
    this.blocks = blocks;
    this.clock = clock;
  }

  /**
   * Why a part's block is not ready, in one statement.
   *
   * @param formingStage which set of form blocks, from 1; for other kinds it does not matter
   * @return a sentence for the person who wants to start: {@code "The form block, stage 1 of
   *     TW-B07-S3 needs repair."}; empty where nothing stands in the way
   */
  @Transactional(readOnly = true)
  public Optional<String> notReady(Part part, BlockKind kind, int formingStage) {
    return new BlocksOfSet(part.drawn().blockSet(), blocks.ofPart(part.id()))
        .notReady(kind, formingStage);
  }

  /** The same for all parts of a build, for lists: one statement, however many parts. */
  @Transactional(readOnly = true)
  public BlocksOfBuild ofBuild(long buildId) {
    return BlocksOfBuild.of(blocks.ofBuild(buildId));
  }

  /**
   * Puts the part's block to those that wait for repair: the one in use, else one on the shelf,
   * else one that waits already. It is reported under the name of whoever is signed in.
   *
   * @param formingStage as for {@link #notReady}
   * @param what is damaged; must not be blank
   * @throws Refused if no such block is recorded, or it is still to make or scrapped
   */
  @MayLogWork
  @Transactional
  public void reportDamage(Part part, BlockKind kind, int formingStage, String what) {
    String code = part.drawn().blockSet();
    BlockLine damaged =
        likeliest(part, kind, formingStage)
            .orElseThrow(
                () ->
                    Refused.conflict(
                        "%s has no %s that could be damaged."
                            .formatted(code.isEmpty() ? part.partNumber() : code, kind.word())));
    blocks
        .findById(damaged.id())
        .orElseThrow()
        .reportDamage(new Signed(SignedIn.name(), clock.instant(), what));
  }

  /**
   * Whether the part's block is recorded and could have been damaged in work.
   *
   * @param formingStage as for {@link #notReady}
   */
  @Transactional(readOnly = true)
  public boolean mayBeDamaged(Part part, BlockKind kind, int formingStage) {
    return likeliest(part, kind, formingStage).isPresent();
  }

  private Optional<BlockLine> likeliest(Part part, BlockKind kind, int formingStage) {
    return blocks.ofPart(part.id()).stream()
        .filter(block -> block.isFor(kind, formingStage))
        .filter(block -> BlockAction.REPORT_DAMAGE.isOpenTo(block.condition()))
        .min(Comparator.comparing(BlockReadiness::likelihood));
  }

  private static int likelihood(BlockLine block) {
    return switch (block.condition()) {
      case IN_USE -> 0;
      case READY -> 1;
      default -> 2;
    };
  }
}
