package dev.flangewright.blocks;

import dev.flangewright.parts.Build;
import dev.flangewright.photos.PhotoSubject;
import dev.flangewright.photos.Photographed;
import dev.flangewright.photos.SubjectKind;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Says which blocks can be photographed: all, scrapped ones too. */
@Component
class PhotographedBlock implements Photographed {

  private final Blocks blocks;

  PhotographedBlock(Blocks blocks) {
    this.blocks = blocks;
  }

  @Override
  public SubjectKind kind() {
    return SubjectKind.BLOCK;
  }

  @Override
  @Transactional(readOnly = true)
  public Optional<PhotoSubject> find(long blockId) {
    return blocks.findWithSetById(blockId).map(PhotographedBlock::subject);
  }

  private static PhotoSubject subject(Block block) {
    BlockSet set = block.blockSet();
    Build build = set.build();
    return new PhotoSubject(
        build.id(),
        build.name(),
        set.code() + ", " + block.name(),
        "/block-sets/%d#block-%d".formatted(set.id(), block.id()));
  }
}
