package dev.flangewright.blocks;

import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Changes the condition of a block under the name of whoever is signed in. */
@Service
public class HandleBlock {

  private final Blocks blocks;
  private final Clock clock;

  HandleBlock(Blocks blocks, Clock clock) {
    this.blocks = blocks;
    this.clock = clock;
  }

  /**
   * @param seen the version of the block that the person saw, or null
   * @throws Refused if there is no such block, its condition does not allow the action, words are
   *     missing, or somebody else was quicker
   * @throws AccessDeniedException if the account may not do this
   */
  @PreAuthorize("hasAnyAuthority('LOG_WORK', 'KEEP_BLOCKS')")
  @Transactional
  public Block by(long blockId, BlockAction action, @Nullable Long seen, String why) {
    if (!SignedIn.may(action.permission())) {
      throw new AccessDeniedException(action + " needs " + action.permission());
    }
    Block block =
        blocks.findWithSetById(blockId).orElseThrow(() -> Refused.unknown("block", blockId));
    block.refuseIfStale(seen);
    block.happens(action, new Signed(SignedIn.name(), clock.instant(), why));
    return block;
  }
}
