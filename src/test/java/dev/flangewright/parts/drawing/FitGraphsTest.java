package dev.flangewright.parts.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.flangewright.drawing.Drawn;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Spot;
import dev.flangewright.forming.FairFit;
import dev.flangewright.forming.FitStation;
import dev.flangewright.forming.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What the graphs of a fit show, against the fit. */
class FitGraphsTest {

  private static final FairFit CIRCLE =
      fit(40, 0.6, i -> new Spot(500 * Math.cos(0.03 * i), 500 * Math.sin(0.03 * i)));

  /** Straight, 30° to the left at the 21st station, straight. */
  private static final FairFit BENT =
      fit(
          41,
          0.6,
          i ->
              i <= 20
                  ? new Spot(15 * i, 0)
                  : new Spot(
                      300 + 15 * (i - 20) * Math.cos(Math.PI / 6),
                      15 * (i - 20) * Math.sin(Math.PI / 6)));

  /** Read up to 0.3 mm off. */
  private static FairFit fit(int count, double tolerance, IntFunction<Spot> at) {
    var random = new Random(5);
    List<Station> read = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double x = at.apply(i).x() + random.nextDouble(-0.3, 0.3);
      double y = at.apply(i).y() + random.nextDouble(-0.3, 0.3);
      read.add(new Station(i + 1, x, y, 90, 20));
    }
    return FairFit.of(read, tolerance);
  }

  private static Drawn deviations(FairFit fit) {
    return Drawn.of(DeviationGraph.of("d", "TW-1", "outer", fit));
  }

  private static Drawn curvature(FairFit fit) {
    return Drawn.of(CurvatureGraph.of("c", "TW-1", "outer", fit));
  }

  @Test
  void every_station_has_a_needle_as_long_as_it_lies_off_up_towards_the_web() {
    Drawn drawn = deviations(CIRCLE);
    List<List<Spot>> needles = drawn.withClass("d-tooth").stream().map(Drawn::spots).toList();
    List<List<Spot>> limits = drawn.withClass("d-limit").stream().map(Drawn::spots).toList();
    assertThat(needles).hasSize(40);
    assertThat(limits).hasSize(2);
    double perMm = (limits.get(1).get(0).y() - limits.get(0).get(0).y()) / (2 * 0.6);
    for (int i = 0; i < 40; i++) {
      double up = needles.get(i).get(0).y() - needles.get(i).get(1).y();
      assertThat(up / perMm).isCloseTo(CIRCLE.stations().get(i).deviationMm(), within(0.001));
    }
  }

  @Test
  void needles_past_the_tolerance_are_thick_and_the_worst_is_named() {
    // A little below the farthest of the stations, of which two in forty may lie beyond.
    double tolerance = 0.97 * CIRCLE.maxDeviationMm();
    FairFit tight =
        FairFit.of(CIRCLE.stations().stream().map(FitGraphsTest::read).toList(), tolerance);
    long past =
        tight.stations().stream().filter(s -> Math.abs(s.deviationMm()) > tolerance).count();
    assertThat(past).isPositive();
    assertThat(deviations(tight).withClass("d-tooth-over")).hasSize((int) past);
    assertThat(tight.shareWithin()).isCloseTo(1 - past / 40.0, within(1e-12));
    FitStation worst = tight.worst();
    assertThat(Math.abs(worst.deviationMm())).isEqualTo(tight.maxDeviationMm());
    assertThat(deviations(tight).words())
        .contains(
            Numbers.figure(tight.maxDeviationMm(), 2) + " mm at station " + worst.number(),
            "tolerance " + Numbers.figure(tolerance, 2) + " mm");
  }

  private static Station read(FitStation at) {
    return new Station(at.number(), at.measured().xMm(), at.measured().yMm(), 90, 20);
  }

  @Test
  void a_corner_stands_upright_in_both_graphs_with_its_turn() {
    for (Drawn drawn : List.of(deviations(BENT), curvature(BENT))) {
      assertThat(drawn.withClass("d-leader")).hasSize(1);
      assertThat(drawn.words()).anyMatch(words -> words.matches("corner (2[5-9]|3[0-5])°"));
      assertThat(drawn.words().get(1)).contains("A corner at station 21.");
    }
    assertThat(deviations(CIRCLE).withClass("d-leader")).isEmpty();
  }

  @Test
  void the_curvature_lies_in_its_band_and_the_tightest_radius_is_lettered() {
    Drawn drawn = curvature(CIRCLE);
    List<Spot> curve = Drawn.spots(drawn.withClass("d-curve").get(0));
    List<Spot> band = Drawn.spots(drawn.withClass("d-band").get(0));
    assertThat(curve).hasSize(40);
    assertThat(band).hasSize(80);
    for (int i = 0; i < 40; i++) {
      assertThat(curve.get(i).y()).isBetween(band.get(i).y(), band.get(79 - i).y());
      assertThat(band.get(i).x()).isEqualTo(band.get(79 - i).x()).isEqualTo(curve.get(i).x());
    }
    // A circle of 500 mm is fitted by one curvature, right to 1 %.
    assertThat(drawn.words()).anyMatch(words -> words.matches("radius (49[5-9]|50[0-5]) mm at.*"));
  }

  @Test
  void a_straight_run_has_no_tightest_radius_and_its_band_stays_on_the_paper() {
    FairFit straight = fit(3, 5, i -> new Spot(100 * i, 0));
    Drawn drawn = curvature(straight);
    assertThat(drawn.withClass("d-peak")).isEmpty();
    assertThat(drawn.words()).contains("the band runs off the graph");
    assertThat(Drawn.spots(drawn.withClass("d-band").get(0)))
        .allSatisfy(spot -> assertThat(spot.y()).isBetween(50.0, 310.0));
    assertThat(drawn.words().get(1)).isEqualTo("The fair curve is straight.");
  }

  @Test
  void a_name_stays_text() {
    String name = "<script>alert(1)</script>";
    for (String svg :
        List.of(
            DeviationGraph.of("d", name, name, CIRCLE),
            CurvatureGraph.of("c", name, name, CIRCLE))) {
      assertThat(svg).doesNotContain("<script");
    }
  }

  @Test
  void rings_that_would_run_together_are_left_out() {
    List<Spot> line = IntStream.range(0, 50).mapToObj(i -> new Spot(10.0 * i, 0)).toList();
    Readings readings = new Readings(List.of(line));
    var wide = new dev.flangewright.drawing.Fit(1, new Spot(0, 0));
    var narrow = new dev.flangewright.drawing.Fit(0.5, new Spot(0, 0));
    assertThat(readings.said(wide)).contains("rings");
    assertThat(readings.said(narrow)).isEmpty();
  }
}
