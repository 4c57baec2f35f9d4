package dev.flangewright.blocks;

import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartSheetPanel;
import dev.flangewright.parts.Parts;
import java.util.HashMap;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Shows on the part sheet which blocks the part is formed on, and whether they are ready. */
@Component
@Order(5)
class BlocksOfPart implements PartSheetPanel {

  private final Parts parts;
  private final BlockSets sets;
  private final Blocks blocks;

  BlocksOfPart(Parts parts, BlockSets sets, Blocks blocks) {
    this.parts = parts;
    this.sets = sets;
    this.blocks = blocks;
  }

  @Override
  public String template() {
    return "blocks/_part :: panel";
  }

  @Override
  @Transactional(readOnly = true)
  public Map<String, Object> model(long partId) {
    Part part = parts.findById(partId).orElseThrow();
    long build = part.build().id();
    String code = part.drawn().blockSet();
    Map<String, Object> model = new HashMap<>();
    model.put("blocksCode", code);
    model.put("blocksBuild", build);
    model.put("blocksOfSet", new BlocksOfSet(code, blocks.ofPart(partId)));
    sets.findByBuildIdAndCode(build, code).ifPresent(set -> model.put("blocksSet", set));
    return model;
  }
}
