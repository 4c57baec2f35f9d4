package dev.flangewright.forming;

import static dev.flangewright.forming.HoleKind.LIGHTENING;
import static dev.flangewright.forming.HoleKind.RIVET_PILOT;
import static dev.flangewright.forming.HoleKind.TOOLING;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.flangewright.forming.HoleFinding.Kind;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Holes in the web of a channel, 300 mm by 100 mm between its mould lines, whose bend lines stand 4
 * mm inside them.
 */
class HoleCheckTest {

  private static final Sheet SHEET = Sheet.of(1, 3);

  /** Three pins out of line and out of balance: nothing to mind about them. */
  private static final List<Hole> PINS =
      List.of(
          new Hole("T1", TOOLING, 30, 30, 5),
          new Hole("T2", TOOLING, 260, 40, 5),
          new Hole("T3", TOOLING, 90, 70, 5));

  private static PartDevelopment part(List<Hole> holes, double allowanceMm) {
    var flanges =
        List.of(
            Loft.through(List.of(new Point(0, 0), new Point(300, 0))),
            Loft.through(List.of(new Point(300, 100), new Point(0, 100))));
    var figures =
        flanges.stream()
            .map(f -> FlangeFigures.of(f, SHEET, MetalValues.UNKNOWN, EdgeCondition.DEBURRED))
            .toList();
    return PartDevelopment.of(flanges, figures, holes, allowanceMm);
  }

  private static List<HoleFinding> found(List<Hole> holes) {
    return HoleCheck.of(part(holes, 0), SHEET.thicknessMm());
  }

  private static List<HoleFinding> besidePins(Hole... holes) {
    return found(Stream.concat(PINS.stream(), Stream.of(holes)).toList());
  }

  private static Hole rivet(double x, double y) {
    return new Hole("R", RIVET_PILOT, x, y, 2.5);
  }

  @Test
  void a_part_without_holes_has_nothing_to_mind() {
    assertThat(found(List.of())).isEmpty();
  }

  @Test
  void holes_clear_of_everything_are_not_mentioned() {
    assertThat(besidePins(rivet(150, 50), new Hole("L", LIGHTENING, 200, 60, 30))).isEmpty();
  }

  @Test
  void holes_come_off_area_and_mass_but_not_off_the_line_to_cut() {
    var holes = List.of(new Hole("L", LIGHTENING, 200, 50, 30), new Hole("T", TOOLING, 50, 50, 5));
    double drilled = Math.PI * (15 * 15 + 2.5 * 2.5);
    var bare = part(List.of(), 6);
    var part = part(holes, 6);
    assertThat(part.areaMm2()).isCloseTo(bare.areaMm2() - drilled, within(1e-9));
    assertThat(part.cut().areaMm2()).isCloseTo(bare.cut().areaMm2() - drilled, within(1e-9));
    assertThat(part.cut().line()).isEqualTo(bare.cut().line());
    // 2780 kg/m³ × 1 mm × area
    assertThat(part.massKg(2780.0, 1)).isCloseTo(2780e-9 * part.cut().areaMm2(), within(1e-12));
  }

  @Test
  void a_hole_off_the_blank_is_named_and_not_taken_off() {
    var outside = new Hole("X", RIVET_PILOT, 299, 50, 6);
    assertThat(besidePins(outside)).extracting(HoleFinding::kind).containsExactly(Kind.OUTSIDE);
    assertThat(part(List.of(outside), 0).areaMm2()).isEqualTo(part(List.of(), 0).areaMm2());
    assertThat(besidePins(new Hole("X", RIVET_PILOT, 900, 50, 6)).get(0).sentence())
        .startsWith("Hole X does not lie within the outline");
  }

  @Test
  void a_hole_in_a_flange_or_over_the_bend_line_is_drilled_after_forming() {
    for (double y : new double[] {-5, 1, 4.5}) {
      assertThat(besidePins(rivet(150, y)))
          .extracting(HoleFinding::kind)
          .containsExactly(Kind.IN_BEND_OR_FLANGE);
    }
  }

  @Test
  void a_rim_nearer_to_the_bend_line_than_twice_the_sheet_is_warned_of() {
    // The bend line stands at y = 4; a rim at 4 + 1.9 is too near, one at 4 + 2.1 is not.
    assertThat(besidePins(rivet(150, 4 + 1.25 + 1.9)).get(0))
        .satisfies(
            finding -> {
              assertThat(finding.kind()).isEqualTo(Kind.NEAR_BEND);
              assertThat(finding.haveMm()).isCloseTo(1.9, within(1e-9));
              assertThat(finding.wantMm()).isEqualTo(2);
            });
    assertThat(besidePins(rivet(150, 4 + 1.25 + 2.1))).isEmpty();
  }

  @Test
  void a_rivet_keeps_two_diameters_from_the_end_of_the_blank() {
    assertThat(besidePins(rivet(4.9, 50)).get(0).sentence())
        .isEqualTo(
            "Hole R: 4.9 mm from its centre to the edge of the blank; two diameters are 5.0 mm.");
    assertThat(besidePins(rivet(5.1, 50))).isEmpty();
    assertThat(besidePins(new Hole("L", LIGHTENING, 16, 65, 30)))
        .as("no rivet bears on a lightening hole")
        .isEmpty();
  }

  @Test
  void rivets_keep_three_diameters_from_each_other_and_two_from_a_lightening_hole() {
    var other = new Hole("S", RIVET_PILOT, 157.4, 50, 2.5);
    assertThat(besidePins(rivet(150, 50), other).get(0).sentence())
        .isEqualTo(
            "Holes R and S: 7.4 mm from centre to centre; three diameters of the larger are 7.5"
                + " mm.");
    var lightening = new Hole("L", LIGHTENING, 169.9, 50, 30);
    assertThat(besidePins(rivet(150, 50), lightening).get(0))
        .satisfies(
            finding -> {
              assertThat(finding.kind()).isEqualTo(Kind.NEAR_RIM);
              assertThat(finding.haveMm()).isCloseTo(4.9, within(1e-9));
              assertThat(finding.wantMm()).isEqualTo(5);
            });
    assertThat(
            besidePins(
                new Hole("L", LIGHTENING, 150, 50, 30), new Hole("M", LIGHTENING, 181, 50, 30)))
        .extracting(HoleFinding::kind)
        .containsExactly(Kind.RIMS_NEAR);
  }

  @Test
  void one_tooling_hole_does_not_hold_a_blank() {
    assertThat(kinds(found(List.of(PINS.get(0))))).containsExactly(Kind.TOO_FEW_TOOLING);
    assertThat(kinds(found(List.of(rivet(150, 50))))).containsExactly(Kind.TOO_FEW_TOOLING);
  }

  private static List<Kind> kinds(List<HoleFinding> findings) {
    return findings.stream().map(HoleFinding::kind).toList();
  }

  private static Hole pin(double x, double y, double diameter) {
    return new Hole("T " + x + " " + y, TOOLING, x, y, diameter);
  }

  @Test
  void two_equal_tooling_holes_fit_turned_round_and_turned_over() {
    assertThat(kinds(found(List.of(pin(30, 30, 5), pin(260, 40, 5)))))
        .containsExactly(Kind.FITS_TURNED, Kind.FITS_MIRRORED);
  }

  @Test
  void two_unequal_ones_still_fit_turned_over_about_the_line_through_them() {
    assertThat(kinds(found(List.of(pin(30, 30, 5), pin(260, 40, 6)))))
        .containsExactly(Kind.FITS_MIRRORED);
  }

  @Test
  void three_on_an_isosceles_triangle_fit_turned_over_and_on_a_scalene_one_in_no_wrong_way() {
    assertThat(kinds(found(List.of(pin(30, 30, 5), pin(250, 30, 5), pin(140, 70, 5)))))
        .containsExactly(Kind.FITS_MIRRORED);
    assertThat(found(PINS)).isEmpty();
  }

  @Test
  void a_third_hole_hardly_out_of_balance_does_not_keep_a_wrong_hand_off() {
    assertThat(kinds(found(List.of(pin(30, 30, 5), pin(250, 30, 5), pin(140.2, 70, 5)))))
        .containsExactly(Kind.FITS_MIRRORED);
    assertThat(found(List.of(pin(30, 30, 5), pin(250, 30, 5), pin(143, 70, 5)))).isEmpty();
  }

  @Test
  void four_on_a_rectangle_fit_every_wrong_way() {
    assertThat(
            kinds(found(List.of(pin(30, 30, 5), pin(270, 30, 5), pin(270, 70, 5), pin(30, 70, 5)))))
        .containsExactly(Kind.FITS_TURNED, Kind.FITS_MIRRORED);
  }

  @Test
  void how_far_the_outline_stands_off_tells_whether_the_eye_would_catch_it() {
    // The channel is symmetrical about its middle lines: pins on one of them hide the mistake.
    var hidden = found(List.of(pin(30, 50, 5), pin(260, 50, 6)));
    assertThat(hidden.get(0).kind()).isEqualTo(Kind.FITS_MIRRORED);
    assertThat(hidden.get(0).haveMm()).isCloseTo(0, within(1e-6));
    // 10 mm off the middle line: mirrored about it the channel stands off by 20 mm.
    var seen = found(List.of(pin(30, 40, 5), pin(260, 40, 6)));
    assertThat(seen.get(0).haveMm()).isCloseTo(20, within(1e-6));
    assertThat(seen.get(0).sentence()).contains("of the other hand").contains("20.0 mm");
  }

  @Test
  void tooling_holes_close_together_are_told_to_stand_apart() {
    assertThat(kinds(found(List.of(pin(30, 30, 5), pin(100, 40, 5), pin(50, 70, 5)))))
        .containsExactly(Kind.TOOLING_NEAR);
  }

  @Test
  void a_hole_beside_a_single_flange_is_not_called_outside() {
    var flange = Loft.through(Loft.circle(600, Loft.even(0, 1, 50)));
    var figures = FlangeFigures.of(flange, SHEET, MetalValues.UNKNOWN, EdgeCondition.DEBURRED);
    // 100 mm towards the centre from the chord: the web reaches there, for all that is known.
    var holes = List.of(new Hole("R", RIVET_PILOT, 350, 190, 2.5), rivet(590, 10));
    var part = PartDevelopment.of(List.of(flange), List.of(figures), holes, 0);
    assertThat(HoleCheck.of(part, 1)).noneMatch(f -> f.kind() == Kind.OUTSIDE);
  }
}
