package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.materials.Thickness;
import dev.flangewright.stock.BatchCondition;
import dev.flangewright.stock.BatchLine;
import dev.flangewright.stock.Batches;
import dev.flangewright.stock.SheetOnHand;
import dev.flangewright.stock.SheetsOfBuild;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** From which temper a piece may be cut. The part is drawn in 2024 T3, 1.2 mm. */
class MetalForCutTest {

  private final MaterialLibrary library = mock(MaterialLibrary.class);
  private final SheetOnHand sheets = mock(SheetOnHand.class);
  private final MetalForCut metal = new MetalForCut(sheets, mock(Batches.class), library);

  @BeforeEach
  void softSheetOnTheRack() {
    BatchLine soft = new BatchLine(1, "B-1", "2024", "O", 1.2, "4711", BatchCondition.RELEASED);
    when(library.thickness(anyString())).thenReturn(Optional.of(new Thickness("1.2", 1.2)));
    when(sheets.ofBuild(anyLong())).thenReturn(new SheetsOfBuild(List.of(soft)));
  }

  @Test
  void a_piece_whose_route_heat_treats_it_is_cut_from_another_temper() {
    assertThat(metal.offered(pieceOn(PartNature.HEAT_TREATED)))
        .extracting(BatchLine::mark)
        .containsExactly("B-1");
  }

  @Test
  void a_piece_that_is_not_heat_treated_is_cut_from_the_temper_drawn_alone() {
    Piece piece = pieceOn(PartNature.TWO_FLANGES);
    assertThat(metal.offered(piece)).isEmpty();
    assertThat(metal.lacking(piece)).as("nothing recorded of T3").isEmpty();
    assertThat(metal.chosen(piece, piece.cutStage(), "")).isEmpty();
  }

  @Test
  void a_stage_that_cuts_nothing_asks_for_no_batch() {
    Piece piece = pieceOn(PartNature.HEAT_TREATED);
    PieceStage other =
        piece.stages().stream()
            .filter(stage -> stage.kind() != StageKind.CUT)
            .findFirst()
            .orElseThrow();
    assertThat(metal.chosen(piece, other, "")).isEmpty();
  }

  private static Piece pieceOn(PartNature nature) {
    return new Piece(
        APart.withFlanges(2),
        1,
        RouteTemplates.route(nature, 1, "ann", APart.NOON),
        "ann",
        APart.NOON);
  }
}
