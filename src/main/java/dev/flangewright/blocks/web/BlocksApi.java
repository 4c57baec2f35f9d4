package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockSet;
import dev.flangewright.blocks.ListBlockSets;
import dev.flangewright.blocks.ReadBlockSet;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Block sets over HTTP. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Block sets")
@Transactional(readOnly = true)
class BlocksApi {

  private final Builds builds;
  private final ListBlockSets list;
  private final ReadBlockSet read;

  BlocksApi(Builds builds, ListBlockSets list, ReadBlockSet read) {
    this.builds = builds;
    this.list = list;
    this.read = read;
  }

  @GetMapping("/builds/{id}/block-sets")
  @Operation(
      summary = "List a build's block sets",
      description = "In the order of their codes; also those that parts name and nobody recorded.")
  List<BlockSetLineAnswer> sets(@PathVariable long id) {
    if (!builds.existsById(id)) {
      throw Refused.unknown("build", id);
    }
    return list.of(id).stream().map(BlockSetLineAnswer::of).toList();
  }

  @GetMapping("/block-sets/{id}")
  @Operation(
      summary = "Read a block set",
      description = "With the log of each block, and the bevels of each part formed on it.")
  BlockSetAnswer set(@PathVariable long id) {
    BlockSet set = read.of(id);
    return BlockSetAnswer.of(set, read.bevels(set));
  }
}
