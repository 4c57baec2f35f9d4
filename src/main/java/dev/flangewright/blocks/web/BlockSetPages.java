package dev.flangewright.blocks.web;

import dev.flangewright.blocks.Block;
import dev.flangewright.blocks.BlockSet;
import dev.flangewright.blocks.ReadBlockSet;
import dev.flangewright.photos.Galleries;
import dev.flangewright.photos.ReadPhotos;
import dev.flangewright.photos.SubjectKind;
import java.time.Clock;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.ModelMap;

/** Reads what the page of a block set shows. */
@Component
class BlockSetPages {

  private final ReadBlockSet read;
  private final ReadPhotos photos;
  private final Clock clock;

  BlockSetPages(ReadBlockSet read, ReadPhotos photos, Clock clock) {
    this.read = read;
    this.photos = photos;
    this.clock = clock;
  }

  @Transactional(readOnly = true)
  String fill(ModelMap model, long setId) {
    BlockSet set = read.of(setId);
    model.addAttribute("build", set.build());
    model.addAttribute("sheetLabel", "Block set " + set.code());
    model.addAttribute(
        "set", BlockSetPage.of(set, read.bevels(set), photosOf(set), clock.instant()));
    return "blocks/set";
  }

  private Galleries photosOf(BlockSet set) {
    return photos.galleries(SubjectKind.BLOCK, set.blocks().stream().map(Block::id).toList());
  }
}
