package dev.flangewright.overview.demo;

import dev.flangewright.blocks.Block;
import dev.flangewright.blocks.BlockAction;
import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.blocks.BlockEntry;
import dev.flangewright.blocks.BlockHand;
import dev.flangewright.blocks.BlockKind;
import dev.flangewright.blocks.BlockSetEntry;
import dev.flangewright.blocks.BlockSets;
import dev.flangewright.blocks.HandleBlock;
import dev.flangewright.blocks.KeepBlockSets;
import dev.flangewright.blocks.KeepBlocks;
import dev.flangewright.forming.Practice;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Role;
import dev.flangewright.people.ShopClock;
import dev.flangewright.people.SignedIn;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;

/**
 * The invented block sets of the Tidewing: those of the frames that have been worked on are there,
 * some of the others are still to make, and the last frame's are not recorded.
 */
@Component
class DemoBlocks {

  private static final Set<String> TO_MAKE = Set.of("TW-B11-S3", "TW-B12-S2", "TW-B13-S2");
  private static final String NOT_RECORDED = "TW-B14";

  /** While one hand lies on it; the piece of the other hand waits for it. */
  private static final String DAMAGED = "TW-B04-S3";

  private static final String REMADE = "TW-B09-S3";
  private static final List<String> AT_THE_BENCH = List.of("TW-B08-S4", "TW-B09-S3", "TW-B10-S1");

  private final Parts parts;
  private final BlockSets sets;
  private final KeepBlockSets keepSets;
  private final KeepBlocks keep;
  private final HandleBlock handle;
  private final ShopClock clock;

  DemoBlocks(
      Parts parts,
      BlockSets sets,
      KeepBlockSets keepSets,
      KeepBlocks keep,
      HandleBlock handle,
      ShopClock clock) {
    this.parts = parts;
    this.sets = sets;
    this.keepSets = keepSets;
    this.keep = keep;
    this.handle = handle;
    this.clock = clock;
  }

  /** Puts the sets on the shelf, before the first piece was begun. */
  void shelve(long buildId, Instant then) {
    Map<String, List<Part>> partsOf =
        parts.findByBuildId(buildId, Pageable.unpaged()).stream()
            .collect(
                Collectors.groupingBy(
                    part -> part.drawn().blockSet(), TreeMap::new, Collectors.toList()));
    as(
        Role.FITTER,
        then,
        () ->
            partsOf.forEach(
                (code, formed) -> {
                  if (!code.startsWith(NOT_RECORDED)) {
                    record(buildId, code, formed);
                  }
                }));
  }

  private void record(long buildId, String code, List<Part> formed) {
    boolean pair = formed.size() > 1;
    String frame = formed.get(0).frame().code();
    BlockSetEntry entry =
        new BlockSetEntry(
            code,
            pair ? BlockHand.REVERSIBLE.name() : "",
            "6",
            "Rack " + (frame.length() < 3 ? "A" : "B") + ", shelf " + frame,
            pair ? "Both hands: turn it over, pins from the other side." : "");
    long set = keepSets.record(buildId, entry).id();
    add(set, BlockKind.FORM_BLOCK, "1", "Beech", TO_MAKE.contains(code));
    if (formed.stream().anyMatch(DemoBlocks::wantsTwoStages)) {
      add(set, BlockKind.FORM_BLOCK, "2", "Beech", TO_MAKE.contains(code));
    }
    add(set, BlockKind.BACKING_BLOCK, "", "Beech", TO_MAKE.contains(code));
    add(set, BlockKind.ROUTER_TEMPLATE, "", "Resin board, 10 mm", false);
    add(set, BlockKind.DRILL_TEMPLATE, "", "Steel, 3 mm, hard bushes", false);
  }

  private static boolean wantsTwoStages(Part part) {
    return part.flanges().stream()
        .map(flange -> flange.summary().passes())
        .anyMatch(passes -> passes != null && passes > Practice.DEFAULT.passesOnOneBlock());
  }

  private long add(long set, BlockKind kind, String stage, String material, boolean toMake) {
    BlockCondition condition = toMake ? BlockCondition.TO_MAKE : BlockCondition.READY;
    return keep.add(set, new BlockEntry(kind.name(), stage, material, "", condition.name())).id();
  }

  /** What has become of them by the time of the last entry. */
  void wear(long buildId, Instant then) {
    as(Role.VOLUNTEER, then, () -> damage(formBlock(buildId, DAMAGED)));
    as(Role.FITTER, then, () -> remake(formBlock(buildId, REMADE)));
    as(Role.FITTER, then, () -> AT_THE_BENCH.forEach(code -> take(formBlock(buildId, code))));
  }

  private void damage(Block block) {
    happens(block.id(), BlockAction.REPORT_DAMAGE, "Edge crushed over 40 mm at station 10");
  }

  private void remake(Block block) {
    happens(block.id(), BlockAction.SCRAP, "Split along the grain at the upper pin");
    long set = block.blockSet().id();
    long again = add(set, BlockKind.FORM_BLOCK, "1", "Resin board", true);
    happens(again, BlockAction.MAKE_READY, "");
  }

  private void take(Block block) {
    happens(block.id(), BlockAction.TAKE, "");
  }

  private void happens(long block, BlockAction action, String why) {
    Block unused = handle.by(block, action, null, why);
  }

  /** The form block that serves a set's first stage now. */
  private Block formBlock(long buildId, String code) {
    return sets.findByBuildIdAndCode(buildId, code).orElseThrow().blocks().stream()
        .filter(block -> block.facts().kind() == BlockKind.FORM_BLOCK)
        .findFirst()
        .orElseThrow();
  }

  private void as(Role who, Instant then, Runnable work) {
    clock.at(then, () -> SignedIn.as(who.word(), who, work));
  }
}
