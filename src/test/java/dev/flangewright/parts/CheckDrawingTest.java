package dev.flangewright.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.mock;

import dev.flangewright.forming.Contour;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.materials.Thickness;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckDrawingTest {

  private final MaterialLibrary library = mock(MaterialLibrary.class);
  private final CheckDrawing check = new CheckDrawing(library);
  private final Faults faults = new Faults();

  @BeforeEach
  void gauges() {
    given(library.thickness("20 SWG")).willReturn(Optional.of(new Thickness("20 SWG", 0.914)));
    given(library.thickness("12")).willReturn(Optional.of(new Thickness("12", 12)));
  }

  @Test
  void a_whole_entry_becomes_the_drawing_with_its_figures_as_written() {
    PartDrawing drawn = check.part(entry("20 SWG", "3.00", "left"), faults);
    assertThat(faults.list()).isEmpty();
    assertThat(drawn.insideBendRadiusMm().text()).isEqualTo("3.00");
    assertThat(drawn.thickness()).isEqualTo("20 SWG");
    assertThat(drawn.hand()).isEqualTo(Hand.LEFT);
  }

  @ParameterizedTest
  @CsvSource({
    "12, 3, left, thickness_mm",
    "thick, 3, left, thickness_mm",
    "20 SWG, 101, left, inside_bend_radius_mm",
    "20 SWG, -1, left, inside_bend_radius_mm",
    "20 SWG, three, left, inside_bend_radius_mm",
    "20 SWG, 3, Left, hand"
  })
  void a_fault_names_its_column(String thickness, String radius, String hand, String column) {
    check.part(entry(thickness, radius, hand), faults);
    assertThat(faults.list()).extracting(Fault::field).containsExactly(column);
  }

  @Test
  void all_faults_are_told_at_once() {
    check.part(new PartEntry("", "", "", "", "", "", "", "", "", "", ""), faults);
    assertThat(faults.list())
        .extracting(Fault::field)
        .contains(
            "part_number",
            "frame",
            "hand",
            "alloy",
            "temper",
            "thickness_mm",
            "inside_bend_radius_mm");
    assertThatThrownBy(faults::refuseIfAny).isInstanceOf(DrawingRefused.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"=SUM(A1)", "@x", "+1", "-1", " F1", "F\n1", "F\u202e1"})
  void a_name_that_a_spreadsheet_or_a_reader_would_take_for_something_else_is_refused(String name) {
    faults.text("frame", name, 40);
    assertThat(faults.list()).isNotEmpty();
  }

  @Test
  void html_in_a_name_is_only_a_name() {
    faults.text("frame", "<script>alert(1)</script>", 40);
    assertThat(faults.list()).isEmpty();
  }

  @Test
  void a_flange_is_carried_at_least_as_wide_as_it_is_finished() {
    check.flange(new FlangeEntry("outer", "shrink", "20", "18", "", "POLISHED", ""), faults);
    assertThat(faults.list()).extracting(Fault::field).containsExactly("working_width_mm");
  }

  @Test
  void a_kind_that_the_contour_contradicts_is_refused_with_the_radius_found() {
    CheckDrawing.kindAgrees(FlangeKind.STRETCH, contour(Arc.shrink(500, 21)), faults);
    assertThat(faults.list()).hasSize(1);
    assertThat(faults.list().get(0).sentence())
        .contains("flange_kind", "stretch", "shrink of radius 500.0 mm at stations 1 to 21");
  }

  @Test
  void a_kind_that_the_contour_makes_passes() {
    CheckDrawing.kindAgrees(FlangeKind.SHRINK, contour(Arc.shrink(500, 21)), faults);
    CheckDrawing.kindAgrees(FlangeKind.STRETCH, contour(Arc.stretch(500, 21)), faults);
    CheckDrawing.kindAgrees(FlangeKind.PLAIN, contour("1, 0, 0, 90\n2, 100, 0, 90"), faults);
    assertThat(faults.list()).isEmpty();
  }

  private Contour contour(String lines) {
    var drawn = new FlangeDrawing(FlangeKind.PLAIN, new Written("18"), new Written("20"));
    return ContourOf.atWorkingWidth(ContourLines.read(lines, faults), drawn);
  }

  private static PartEntry entry(String thickness, String radius, String hand) {
    return new PartEntry(
        "TW-1", "F1", "1", hand, "D-1", "A", "2024", "O", thickness, radius, "BS-1");
  }
}
