package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockSet;
import dev.flangewright.blocks.ReadBlockSet;
import java.time.Clock;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.ModelMap;

/** Reads what the page of a block set shows. */
@Component
class BlockSetPages {

  private final ReadBlockSet read;
  private final Clock clock;

  BlockSetPages(ReadBlockSet read, Clock clock) {
    this.read = read;
    this.clock = clock;
  }

  @Transactional(readOnly = true)
  String fill(ModelMap model, long setId) {
    BlockSet set = read.of(setId);
    model.addAttribute("build", set.build());
    model.addAttribute("sheetLabel", "Block set " + set.code());
    model.addAttribute("set", BlockSetPage.of(set, read.bevels(set), clock.instant()));
    return "blocks/set";
  }
}
