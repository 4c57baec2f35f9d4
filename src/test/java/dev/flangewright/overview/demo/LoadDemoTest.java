package dev.flangewright.overview.demo;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceState;
import dev.flangewright.bench.Pieces;
import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.blocks.BlockLine;
import dev.flangewright.blocks.Blocks;
import dev.flangewright.blocks.ListBlockSets;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.RiskLevel;
import dev.flangewright.heat.FormingWindows;
import dev.flangewright.heat.OpenWindow;
import dev.flangewright.heat.WindowState;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.FigurePart;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartFigures;
import dev.flangewright.parts.PartProgress;
import dev.flangewright.parts.PartState;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.quality.Inspection;
import dev.flangewright.quality.Inspections;
import dev.flangewright.quality.Outcome;
import dev.flangewright.testing.DatabaseTest;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.annotation.Transactional;

@DatabaseTest(properties = "spring.application.name=flangewright-demo-tests")
@Transactional
class LoadDemoTest {

  @Autowired LoadDemo demo;
  @Autowired Builds builds;
  @Autowired Parts parts;
  @Autowired Pieces pieces;
  @Autowired Blocks blocks;
  @Autowired ListBlockSets blockSets;
  @Autowired Inspections inspections;
  @Autowired PartProgress progress;
  @Autowired FigurePart figures;
  @Autowired FormingWindows windows;

  private long build;

  @BeforeEach
  void load() {
    SignedIn.as("lead", Role.LEAD, () -> build = demo.load());
  }

  @Test
  void every_segment_can_be_formed_as_it_is_registered() {
    List<Part> all = parts.findAll();
    assertThat(all).hasSize(62);
    for (Part part : all) {
      PartFigures figured = figures.of(part);
      assertThat(figured.development()).as(part.partNumber()).isNotNull();
      assertThat(figured.development().problem()).as(part.partNumber()).isNull();
      assertThat(figured.risk().unknown()).as(part.partNumber()).isEmpty();
      assertThat(figured.flanges())
          .as(part.partNumber())
          .hasSize(2)
          .allMatch(flange -> flange.working().kind() == flange.flange().drawn().kind());
    }
  }

  @Test
  void the_laid_out_segment_has_holes_that_stand_well_and_load_one_way_only() {
    PartFigures figured =
        figures.of(parts.findByBuildIdAndPartNumber(build, DemoLayout.PART).orElseThrow());
    assertThat(figured.development().holes()).hasSize(5);
    assertThat(figured.development().bendLines()).as("broken by the cutout").hasSize(3);
    assertThat(figured.holeFindings()).isEmpty();
  }

  @Test
  void most_sheets_go_round_and_two_are_beyond_their_metal() {
    Map<RiskLevel, Long> levels =
        parts.findAll().stream()
            .map(part -> RiskLevel.valueOf(String.valueOf(part.summary().riskLevel())))
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    assertThat(levels.get(RiskLevel.LOW)).isGreaterThan(31);
    assertThat(levels.get(RiskLevel.MODERATE)).isGreaterThan(3);
    assertThat(levels.get(RiskLevel.HIGH)).isGreaterThan(3);
    assertThat(levels.get(RiskLevel.BEYOND)).isEqualTo(2);
  }

  @Test
  void one_segment_has_a_reverse_curve_and_some_have_a_plain_floor() {
    List<FlangeKind> kinds =
        parts.findAll().stream()
            .flatMap(part -> part.flanges().stream())
            .map(flange -> flange.drawn().kind())
            .toList();
    assertThat(kinds).filteredOn(FlangeKind.MIXED::equals).hasSize(1);
    assertThat(kinds).filteredOn(FlangeKind.PLAIN::equals).hasSize(4);
  }

  @Test
  void the_history_is_half_finished() {
    Map<PartState, Long> states =
        progress.ofBuild(build).values().stream()
            .collect(Collectors.groupingBy(PartProgress.Progress::state, Collectors.counting()));
    assertThat(states)
        .containsEntry(PartState.ACCEPTED, 22L)
        .containsEntry(PartState.CONCESSION, 2L)
        .containsEntry(PartState.IN_WORK, 9L)
        .containsEntry(PartState.HELD, 2L);
  }

  @Test
  void six_pieces_were_scrapped_for_five_reasons_and_four_were_made_again() {
    List<Inspection> scrapped =
        inspections.findAll().stream()
            .filter(inspection -> inspection.outcome() == Outcome.SCRAP)
            .toList();
    assertThat(scrapped).hasSize(6);
    assertThat(scrapped)
        .extracting(inspection -> inspection.cause().code())
        .containsOnly(
            "folded-ruffle", "hole-off", "edge-overstrained", "contour-off", "edge-not-deburred");
    long again =
        scrapped.stream()
            .map(inspection -> inspection.piece().part().id())
            .filter(part -> pieces.findByPartIdOrderByNumber(part).size() == 2)
            .count();
    assertThat(again).isEqualTo(4);
  }

  @Test
  void every_entry_lies_in_the_past_and_in_order() {
    for (Piece piece : pieces.findAll()) {
      Instant before = piece.createdAt();
      for (var entry : piece.log()) {
        assertThat(entry.doneAt()).isAfterOrEqualTo(before).isBefore(Instant.now());
        before = entry.doneAt();
      }
    }
    assertThat(pieces.findAll()).anyMatch(piece -> piece.state() == PieceState.SCRAPPED);
  }

  @Test
  void most_blocks_are_ready_and_some_are_to_make_damaged_scrapped_or_at_the_bench() {
    Map<BlockCondition, Long> conditions =
        blocks.ofBuild(build).stream()
            .collect(Collectors.groupingBy(BlockLine::condition, Collectors.counting()));
    assertThat(conditions.get(BlockCondition.READY)).isGreaterThan(100);
    assertThat(conditions.get(BlockCondition.TO_MAKE)).isBetween(6L, 9L);
    assertThat(conditions)
        .containsEntry(BlockCondition.NEEDS_REPAIR, 1L)
        .containsEntry(BlockCondition.SCRAPPED, 1L)
        .containsEntry(BlockCondition.IN_USE, 3L);
    assertThat(blockSets.of(build)).filteredOn(line -> line.set() == null).hasSize(3);
  }

  @Test
  void one_piece_is_soft_from_the_quench_and_one_lies_in_the_freezer() {
    Map<Long, OpenWindow> found = windows.ofBuild(build, Instant.now());
    assertThat(found.values().stream().map(OpenWindow::state).toList())
        .containsExactlyInAnyOrder(WindowState.OPEN, WindowState.IN_FREEZER);
  }

  @Test
  void the_build_says_that_it_is_invented() {
    assertThat(builds.findById(build).orElseThrow().note()).contains("Invented");
  }
}
