package dev.flangewright.blocks.web;

import dev.flangewright.blocks.Blocks;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Reads a block for an answer, in a transaction of its own: after a change is stored, so that the
 * version told is the one to send back.
 */
@Component
class ReadBlock {

  private final Blocks blocks;

  ReadBlock(Blocks blocks) {
    this.blocks = blocks;
  }

  @Transactional(readOnly = true)
  BlockAnswer of(long id) {
    return blocks.findById(id).map(BlockAnswer::of).orElseThrow(() -> Refused.unknown("block", id));
  }
}
