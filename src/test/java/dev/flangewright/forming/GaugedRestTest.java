package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a gauge leaves, laid along the edge; expectations by hand from the geometry. */
class GaugedRestTest {

  private static final Sheet SHEET = Sheet.of(1, 3);

  /** 20 stations a degree apart on a radius of 500 mm: 8.7266 mm of arc each, 165.8 mm in all. */
  private static final FlangeFigures ARC =
      FlangeFigures.of(arc(), SHEET, MetalValues.UNKNOWN, EdgeCondition.POLISHED);

  @Test
  void the_zones_share_the_rest_by_their_gauged_length() {
    GaugedRest rest =
        GaugedRest.along(ARC, SHEET, Practice.DEFAULT, EdgeError.TOO_LONG, 0.01, 30, 130, true);
    assertThat(rest.rest().millimetres()).isCloseTo(1.0, within(1e-12));
    assertThat(rest.zones()).extracting(GaugedRest.Zone::number).containsExactly(1, 2, 3);
    List<Double> shares = rest.zones().stream().map(GaugedRest.Zone::millimetres).toList();
    assertThat(shares.get(0)).isCloseTo(0.2, within(1e-12));
    assertThat(shares.get(1)).isCloseTo(0.5, within(1e-12));
    assertThat(shares.get(2)).isCloseTo(0.3, within(1e-12));
    assertThat(rest.zones().get(0).fromMm()).isEqualTo(30);
    assertThat(rest.zones().get(2).toMm()).isEqualTo(130);
    assertThat(rest.rest().lowerBound()).isTrue();
  }

  /** FM-PASS for a stretch: one pass a per cent; a shrink takes 1.5·ε_cr if that is more. */
  @Test
  void the_passes_are_those_of_the_strain_that_is_left() {
    assertThat(passes(EdgeError.TOO_SHORT, 0.025)).isEqualTo(3);
    assertThat(passes(EdgeError.TOO_SHORT, 0.0001)).isEqualTo(1);
    double critical = Ruffling.criticalStrain(1, ARC.stations().get(0).flatWidthMm());
    double each = Math.max(0.01, 1.5 * critical);
    assertThat(passes(EdgeError.TOO_LONG, 2.5 * each)).isEqualTo(3);
  }

  /**
   * A flat of 6 mm ruffles at 1.74 % (FM-RUFFLE by hand: 0.57·π²/9/6²), so a pass shrinks 2.6 %;
   * one of 36 mm at 0.05 %, so a pass shrinks 1 %. The station in the middle of the stretch
   * decides.
   */
  @Test
  void the_passes_are_reckoned_where_the_gauge_lay() {
    assertThat(passesOnATaper(5, 25)).isEqualTo(2);
    assertThat(passesOnATaper(125, 155)).isEqualTo(3);
  }

  private static int passesOnATaper(double fromMm, double toMm) {
    return GaugedRest.along(
            FlangeFigures.of(taper(), SHEET, MetalValues.UNKNOWN, EdgeCondition.POLISHED),
            SHEET,
            Practice.DEFAULT,
            EdgeError.TOO_LONG,
            0.03,
            fromMm,
            toMm,
            true)
        .passes();
  }

  /** The same arc; the flange 10 mm wide over its first half and 40 mm over its second. */
  private static Contour taper() {
    return Contour.of(
        arc().stations().stream()
            .map(s -> new Station(s.number(), s.xMm(), s.yMm(), 90, s.number() <= 10 ? 10 : 40))
            .toList());
  }

  @Test
  void an_edge_too_long_is_still_to_shrink_and_one_too_short_still_to_stretch() {
    assertThat(EdgeError.TOO_LONG.signed(0.01)).isEqualTo(-0.01);
    assertThat(EdgeError.TOO_SHORT.signed(0.01)).isEqualTo(0.01);
  }

  /** FM-PASS by hand: 2.5 % at the workshop's own 2 % a pass is two passes, not three. */
  @Test
  void the_passes_go_by_the_workshops_own_strain_a_pass() {
    Practice own = new Practice(Map.of(ShopValue.STRAIN_PER_PASS, 0.02));
    assertThat(GaugedRest.along(ARC, SHEET, own, EdgeError.TOO_SHORT, 0.025, 20, 80, true).passes())
        .isEqualTo(2);
    assertThat(passes(EdgeError.TOO_SHORT, 0.025)).isEqualTo(3);
  }

  @Test
  void nothing_left_needs_no_pass() {
    GaugedRest rest =
        GaugedRest.along(ARC, SHEET, Practice.DEFAULT, EdgeError.TOO_LONG, 0, 0, 50, true);
    assertThat(rest.passes()).isZero();
    assertThat(rest.rest().millimetres()).isZero();
  }

  /**
   * A free strip longer on the flange's side curves away from it: with a positive strain at the
   * edge the bow of the section is positive, which is convex on the flange's face (elastic beam
   * theory; the strip is integrated here slice by slice).
   */
  @Test
  void an_edge_too_long_shows_its_gap_on_the_other_face() {
    double flat = 20;
    double depth = 60;
    int slices = 20_000;
    double area = depth + flat;
    double centroid = flat * flat / 2 / area;
    double moment = 0;
    for (int i = 0; i < slices; i++) {
      double y = (i + 0.5) / slices * flat;
      moment += y / flat * (y - centroid) * flat / slices;
    }
    assertThat(moment).isPositive();
    assertThat(new BowGauge(depth, 1, flat, 90, 0, 0).bowPerStrain()).isPositive();
    assertThat(EdgeError.byStraightEdge(false)).isEqualTo(EdgeError.TOO_LONG);
    assertThat(EdgeError.byStraightEdge(true)).isEqualTo(EdgeError.TOO_SHORT);
  }

  /** A template that touches at its ends lies on an edge shorter than itself, whichever side. */
  @Test
  void a_gap_in_the_middle_of_the_template_is_an_edge_too_short() {
    assertThat(EdgeError.byTemplate(true)).isEqualTo(EdgeError.TOO_SHORT);
    assertThat(EdgeError.byTemplate(false)).isEqualTo(EdgeError.TOO_LONG);
  }

  @Test
  void an_unfinished_shrink_is_too_long_and_an_unfinished_stretch_too_short() {
    assertThat(EdgeError.ofUnfinished(FlangeKind.SHRINK)).isEqualTo(EdgeError.TOO_LONG);
    assertThat(EdgeError.ofUnfinished(FlangeKind.STRETCH)).isEqualTo(EdgeError.TOO_SHORT);
  }

  private static int passes(EdgeError error, double strain) {
    return GaugedRest.along(ARC, SHEET, Practice.DEFAULT, error, strain, 20, 80, true).passes();
  }

  private static Contour arc() {
    var stations = new ArrayList<Station>();
    for (int i = 0; i < 20; i++) {
      double angle = Math.toRadians(i);
      stations.add(new Station(i + 1, 500 * Math.cos(angle), 500 * Math.sin(angle), 90, 20));
    }
    return Contour.of(stations);
  }
}
