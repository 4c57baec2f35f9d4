package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.flangewright.forming.FormingException.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Fair curves through digitised stations, against curves whose own curvature is known. */
class FairFitTest {

  private static final int SEEDS = 50;
  private static final double SCATTER_MM = 0.3;

  /** A contour read with errors, fitted, and the truth at its stations. */
  private record Trial(Shape shape, List<Double> at, FairFit fit) {

    /** Up to 0.3 mm off in x and in y, evenly distributed. */
    static Trial even(Shape shape, int count, long seed, double tolerance) {
      var random = new Random(seed);
      double[] at = shape.uneven(count, random);
      var read = Shape.scattered(shape.points(at), random, SCATTER_MM);
      return new Trial(
          shape, DoubleStream.of(at).boxed().toList(), FairFit.of(Shape.read(read), tolerance));
    }

    /** 0.3 mm standard deviation in x and in y. */
    static Trial normal(Shape shape, int count, long seed, double tolerance) {
      var random = new Random(seed);
      double[] at = shape.uneven(count, random);
      var read = Shape.scatteredNormally(shape.points(at), random, SCATTER_MM);
      return new Trial(
          shape, DoubleStream.of(at).boxed().toList(), FairFit.of(Shape.read(read), tolerance));
    }

    double errorOfPeakDemand() {
      double truth = 0;
      for (double u : at) {
        truth = Math.min(truth, strain(shape.curvaturePerMm(u)));
      }
      return figures(fit.contour()).peakEdgeStrain() / truth - 1;
    }

    double shareInBand() {
      int in = 0;
      for (int i = 0; i < at.size(); i++) {
        var station = fit.stations().get(i);
        double truth = shape.curvaturePerMm(at.get(i));
        in += station.curvatureLowPerMm() <= truth && truth <= station.curvatureHighPerMm() ? 1 : 0;
      }
      return (double) in / at.size();
    }
  }

  private static double strain(double perMm) {
    return FlangeSection.of(FlangeKind.SHRINK, 1 / perMm, Sheet.of(1, 3), 20, 90).edgeStrain();
  }

  private static FlangeFigures figures(Contour contour) {
    return FlangeFigures.of(contour, Sheet.of(1, 3), MetalValues.UNKNOWN, EdgeCondition.DEBURRED);
  }

  private static double rms(double... errors) {
    return Math.sqrt(DoubleStream.of(errors).map(e -> e * e).average().getAsDouble());
  }

  @Tag("trials")
  @ParameterizedTest
  @EnumSource
  void peak_demand_from_forty_readings_within_three_tenths_is_right_to_ten_percent(Shape shape) {
    // Twice the largest error of a reading as tolerance.
    double[] errors =
        IntStream.range(0, SEEDS)
            .mapToDouble(seed -> Trial.even(shape, 40, seed, 0.6).errorOfPeakDemand())
            .toArray();
    assertThat(rms(errors)).isLessThan(0.10);
  }

  @Tag("trials")
  @ParameterizedTest
  @EnumSource
  void peak_demand_from_readings_of_three_tenths_deviation_is_right_to_ten_percent(Shape shape) {
    // A little over three standard deviations as tolerance.
    double[] errors =
        IntStream.range(0, SEEDS)
            .mapToDouble(seed -> Trial.normal(shape, 40, seed, 1).errorOfPeakDemand())
            .toArray();
    assertThat(rms(errors)).isLessThan(0.10);
  }

  @Tag("trials")
  @ParameterizedTest
  @EnumSource
  void nine_in_ten_true_curvatures_lie_in_the_band(Shape shape) {
    // 95 % is aimed at; broken lines through smooth curves and few trials cost some of it.
    double share =
        IntStream.range(0, SEEDS)
            .mapToDouble(seed -> Trial.even(shape, 40, seed, 0.6).shareInBand())
            .average()
            .getAsDouble();
    assertThat(share).isGreaterThan(0.9);
  }

  @Test
  void the_band_is_not_so_wide_that_it_says_nothing() {
    var fit = Trial.even(Shape.CIRCLE, 40, 1, 0.6).fit();
    int middle = 20;
    var station = fit.stations().get(middle);
    assertThat(station.curvatureHighPerMm() - station.curvatureLowPerMm())
        .isLessThan(0.4 * station.curvaturePerMm());
    var band = station.edgeStrain(Sheet.of(1, 3), fit.contour().stations().get(middle));
    assertThat(band.low()).isLessThan(strain(1.0 / 500));
    assertThat(band.high()).isGreaterThan(strain(1.0 / 500)).isNegative();
  }

  @Tag("trials")
  @ParameterizedTest
  @ValueSource(ints = {8, 12, 40, 150, 400})
  void any_number_of_readings_keeps_the_rule_of_the_tolerance(int count) {
    for (var shape : Shape.values()) {
      var fit = Trial.even(shape, count, 3, 0.6).fit();
      assertThat(fit.maxDeviationMm()).isLessThanOrEqualTo(1.5 * 0.6);
      long outside = fit.stations().stream().filter(s -> Math.abs(s.deviationMm()) > 0.6).count();
      assertThat(outside).isLessThanOrEqualTo(count / 20);
      assertThat(fit.rmsDeviationMm()).isLessThan(fit.maxDeviationMm());
      assertThat(fit.degreesOfFreedom()).isBetween(3, 6);
      assertThat(fit.corners()).isEmpty();
      for (var station : fit.stations()) {
        // The fitted point is the foot of the reading's perpendicular, but for readings that
        // scatter past each other.
        double away = station.fitted().distanceMm(station.measured());
        assertThat(away)
            .isCloseTo(Math.abs(station.deviationMm()), within(count > 100 ? 0.5 : 1e-4));
      }
    }
  }

  @Test
  void exact_stations_of_a_circle_come_back_as_that_circle() {
    var stations = Shape.read(Loft.circle(500, Loft.uneven(0, 1.2, 40)));
    var fit = FairFit.of(stations, 0.5);
    assertThat(fit.degreesOfFreedom()).isEqualTo(3);
    assertThat(fit.maxDeviationMm()).isLessThan(1e-6);
    assertThat(fit.contour().radiusMm(20)).isCloseTo(500, withinPercentage(1e-6));
    assertThat(fit.contour().lengthMm()).isCloseTo(600, within(1e-5));
  }

  @Test
  void a_deviation_is_positive_towards_the_web() {
    var points = new ArrayList<>(Loft.circle(500, Loft.even(0, 1.2, 41)));
    double inside = 500 - 0.4;
    double angle = 0.6;
    points.set(20, new Point(inside * Math.cos(angle), inside * Math.sin(angle)));
    var station = FairFit.of(Shape.read(points), 0.6).stations().get(20);
    // One of 41 pulls the circle by a few hundredths.
    assertThat(station.deviationMm()).isCloseTo(0.4, within(0.05));
  }

  @Test
  void a_wider_tolerance_never_needs_more_freedom() {
    var random = new Random(11);
    var shape = Shape.SUPERELLIPSE;
    var read = Shape.read(Shape.scattered(shape.points(shape.even(60)), random, 0.3));
    int before = Integer.MAX_VALUE;
    for (double tolerance : new double[] {0.5, 0.7, 1, 2, 5}) {
      int freedom = FairFit.of(read, tolerance).degreesOfFreedom();
      assertThat(freedom).isLessThanOrEqualTo(before);
      before = freedom;
    }
  }

  @Tag("trials")
  @Test
  void a_straight_edge_read_with_scatter_is_straight() {
    for (int seed = 0; seed < SEEDS; seed++) {
      var points = Loft.curve(Loft.uneven(0, 600, 40), s -> new Point(0.6 * s, 0.8 * s));
      var fit = FairFit.of(Shape.read(Shape.scattered(points, new Random(seed), 0.3)), 0.6);
      assertThat(fit.degreesOfFreedom()).isEqualTo(2);
      assertThat(fit.contour().kind()).isEqualTo(FlangeKind.PLAIN);
    }
  }

  @Tag("trials")
  @Test
  void a_reverse_curve_keeps_its_straight_run_straight_and_both_its_bends() {
    DoubleUnaryOperator curvature = s -> s < 250 ? 1.0 / 300 : s < 550 ? 0 : -1.0 / 400;
    double[] at = Loft.uneven(0, 800, 60);
    var shrink = new double[SEEDS];
    var stretch = new double[SEEDS];
    int straight = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      var points = Shape.scattered(Loft.withCurvature(at, curvature), new Random(seed), 0.3);
      var contour = FairFit.of(Shape.read(points), 0.6).contour();
      assertThat(contour.kind()).isEqualTo(FlangeKind.MIXED);
      straight += contour.kindAt(30) == FlangeKind.PLAIN ? 1 : 0;
      var runs = contour.runs();
      shrink[seed] = 300 / runs.get(0).tightestRadiusMm() - 1;
      stretch[seed] = 400 / runs.get(runs.size() - 1).tightestRadiusMm() - 1;
      for (int i = 0; i < at.length; i++) {
        if (at[i] < 180) {
          assertThat(contour.kindAt(i)).isEqualTo(FlangeKind.SHRINK);
        } else if (at[i] > 620) {
          assertThat(contour.kindAt(i)).isEqualTo(FlangeKind.STRETCH);
        } else if (Math.abs(at[i] - 400) < 40) {
          // A radius of 2 m stands 0.4 mm off the middle 80 mm: hidden by the tolerance.
          assertThat(contour.curvaturePerMm(i)).isCloseTo(0, within(1.0 / 2000));
        }
      }
    }
    assertThat(rms(shrink)).isLessThan(0.10);
    assertThat(rms(stretch)).isLessThan(0.10);
    // In the other readings a slight bend over the run fits a little better.
    assertThat(straight).isGreaterThan(SEEDS / 2);
  }

  @Tag("trials")
  @Test
  void the_other_hand_has_the_same_fit_station_for_station() {
    for (var shape : Shape.values()) {
      var points = Shape.scattered(shape.points(shape.even(37)), new Random(5), 0.3);
      var one = FairFit.of(Shape.read(points), 0.6);
      var other = FairFit.of(Shape.read(Loft.mirrored(points)), 0.6);
      assertThat(other.degreesOfFreedom()).isEqualTo(one.degreesOfFreedom());
      for (int i = 0; i < 37; i++) {
        // The knots' places are laid along a first fit whose ends settle to hundredths of a mm:
        // 0.01 % of curvature.
        assertThat(other.contour().curvaturePerMm(36 - i))
            .isCloseTo(one.contour().curvaturePerMm(i), within(3e-7));
        assertThat(other.stations().get(36 - i).deviationMm())
            .isCloseTo(one.stations().get(i).deviationMm(), within(1e-3));
      }
    }
  }

  @Test
  void tolerance_zero_is_the_contour_through_the_stations_as_they_are() {
    var stations = Shape.read(Loft.ellipse(400, 300, Loft.uneven(0, 1.4, 30)));
    var fit = FairFit.of(stations, 0);
    var exact = Contour.of(stations);
    assertThat(fit.contour().stations()).isEqualTo(stations);
    assertThat(fit.maxDeviationMm()).isZero();
    assertThat(fit.degreesOfFreedom()).isEqualTo(60);
    for (int i = 0; i < 30; i++) {
      assertThat(fit.contour().curvaturePerMm(i)).isEqualTo(exact.curvaturePerMm(i));
      assertThat(fit.contour().arcMm(i)).isEqualTo(exact.arcMm(i));
      assertThat(fit.stations().get(i).fitted()).isEqualTo(stations.get(i).point());
    }
    assertThat(Contour.fitted(stations, 0).lengthMm()).isEqualTo(exact.lengthMm());
  }

  @Test
  void numbers_angles_and_widths_stay_with_their_stations() {
    var random = new Random(2);
    var points = Shape.scattered(Loft.circle(500, Loft.even(0, 1, 20)), random, 0.2);
    var stations =
        IntStream.range(0, 20)
            .mapToObj(
                i ->
                    new Station(
                        10 + 3 * i,
                        points.get(i).xMm(),
                        points.get(i).yMm(),
                        80 + i,
                        20 - i / 10.0))
            .toList();
    var fitted = Contour.fitted(stations, 0.5).stations();
    for (int i = 0; i < 20; i++) {
      assertThat(fitted.get(i)).isEqualTo(stations.get(i).movedTo(fitted.get(i).point()));
    }
  }

  @Test
  void a_tolerance_outside_its_range_is_refused() {
    var stations = Shape.read(Loft.circle(500, Loft.even(0, 1, 20)));
    for (double bad : new double[] {-0.1, 5.1}) {
      var refusal = catchThrowableOfType(FormingException.class, () -> FairFit.of(stations, bad));
      assertThat(refusal.reason()).isEqualTo(Reason.OUT_OF_RANGE);
      assertThat(refusal.field()).isEqualTo("toleranceMm");
    }
    var refusal =
        catchThrowableOfType(FormingException.class, () -> FairFit.of(stations, Double.NaN));
    assertThat(refusal.reason()).isEqualTo(Reason.NOT_FINITE);
  }

  @Test
  void scatter_beyond_the_tolerance_is_refused_and_names_the_reading_farthest_off() {
    var points = new ArrayList<>(Loft.circle(500, Loft.even(0, 1.2, 40)));
    points.set(17, new Point(points.get(17).xMm() + 4, points.get(17).yMm() + 3));
    var refusal =
        catchThrowableOfType(FormingException.class, () -> FairFit.of(Shape.read(points), 0.3));
    assertThat(refusal.reason()).isEqualTo(Reason.NO_FAIR_CURVE);
    assertThat(refusal.station()).isEqualTo(18);
    assertThat(refusal)
        .hasMessageStartingWith("station 18: toleranceMm is 0.3: no fair curve comes this near");
  }

  @Test
  void two_three_and_four_readings_are_fitted_or_refused_but_never_a_riddle() {
    var two = Shape.read(List.of(new Point(0, 0), new Point(100, 0)));
    assertThat(FairFit.of(two, 0.5).degreesOfFreedom()).isEqualTo(2);
    var three = Shape.read(Loft.circle(200, new double[] {0, 0.2, 0.5}));
    assertThat(FairFit.of(three, 0.5).contour().radiusMm(1)).isCloseTo(200, withinPercentage(1e-4));
    var four = Shape.read(Loft.ellipse(200, 150, Loft.even(0, 0.8, 4)));
    assertThat(FairFit.of(four, 0.5).contour().radiusMm(1)).isBetween(100.0, 250.0);
  }

  @Tag("trials")
  @Test
  void whatever_is_read_the_fit_is_finite_or_refused() {
    var random = new Random(23);
    var shapes = List.of(Shape.values());
    int fitted = 0;
    for (int i = 0; i < 150; i++) {
      int count = random.nextInt(2, 40);
      double size = Math.exp(random.nextDouble(Math.log(1), Math.log(20_000)));
      double wild = random.nextInt(3) == 0 ? size : random.nextDouble(0, 2);
      var shape = shapes.get(random.nextInt(shapes.size()));
      var points =
          shape.points(shape.uneven(count, random)).stream()
              .map(p -> new Point(p.xMm() * size / 700, p.yMm() * size / 700))
              .toList();
      var read = Shape.read(Shape.scattered(points, random, Math.max(1e-6, wild)));
      try {
        var fit = FairFit.of(read, random.nextDouble(0.01, 5));
        fitted++;
        assertThat(fit.rmsDeviationMm()).isFinite();
        assertThat(fit.contour().lengthMm()).isPositive().isFinite();
        for (var station : fit.stations()) {
          assertThat(station.curvaturePerMm()).isFinite();
          assertThat(station.curvatureLowPerMm()).isLessThanOrEqualTo(station.curvaturePerMm());
          assertThat(station.curvatureHighPerMm())
              .isGreaterThanOrEqualTo(station.curvaturePerMm())
              .isFinite();
          assertThat(station.curvatureLowPerMm()).isFinite();
        }
      } catch (FormingException refusal) {
        assertThat(refusal).hasMessageMatching("(?s).{10,}");
      }
    }
    assertThat(fitted).isBetween(30, 140);
  }
}
