package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for any flange, whatever its contour; each number is the seed of its draws. */
class FlangePropertiesTest {

  private static final Sheet SHEET = new Sheet(1.2, 3, 0.42, 0.8);
  private static final MetalValues METAL =
      new MetalValues(15.0, 290.0, 440.0, 73_100.0, 2780.0, 2.5);

  static IntStream seeds() {
    return IntStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void both_hands_have_the_same_figures_station_for_station(int seed) {
    var stations = wavy(new Random(seed));
    var one = figures(stations);
    var mirrored = new ArrayList<>(changed(stations, s -> at(s, -s.xMm(), s.yMm())));
    Collections.reverse(mirrored);
    var other = figures(renumbered(mirrored));
    int last = stations.size() - 1;
    for (int i = 0; i <= last; i++) {
      assertAlike(other.stations().get(last - i), one.stations().get(i));
    }
    assertThat(other.kind()).isEqualTo(one.kind());
    assertThat(other.takeOutMm()).isCloseTo(one.takeOutMm(), within(1e-7));
    assertThat(other.putInMm()).isCloseTo(one.putInMm(), within(1e-7));
    assertThat(other.passes()).isEqualTo(one.passes());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void where_the_frame_lies_on_the_drawing_changes_nothing(int seed) {
    var random = new Random(seed);
    var stations = wavy(random);
    double c = Math.cos(seed);
    double s = Math.sin(seed);
    double x = random.nextDouble(-5_000, 5_000);
    var moved =
        changed(
            stations, p -> at(p, x + c * p.xMm() - s * p.yMm(), 800 + s * p.xMm() + c * p.yMm()));
    var one = figures(stations);
    var other = figures(moved);
    for (int i = 0; i < stations.size(); i++) {
      assertAlike(other.stations().get(i), one.stations().get(i));
    }
    assertThat(other.gatherMm()).isCloseTo(one.gatherMm(), within(1e-6));
  }

  /** Rounding only: 1e-12 mm of a coordinate over the arms of a circle. */
  private static void assertAlike(StationFigures other, StationFigures one) {
    assertThat(other.kind()).isEqualTo(one.kind());
    assertThat(other.curvaturePerMm()).isCloseTo(one.curvaturePerMm(), within(1e-10));
    assertThat(other.edgeStrain()).isCloseTo(one.edgeStrain(), within(1e-8));
    assertThat(other.blankBeyondTangentMm()).isCloseTo(one.blankBeyondTangentMm(), within(1e-7));
    assertThat(other.ruffleRatio()).isCloseTo(one.ruffleRatio(), within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_wider_flange_or_up_to_a_right_angle_a_further_turned_one_strains_more_everywhere(
      int seed) {
    var stations = wavy(new Random(seed));
    var one = figures(stations);
    var wider = figures(changed(stations, s -> with(s, s.bendAngleDeg(), s.widthMm() + 1)));
    var further = figures(changed(stations, s -> with(s, s.bendAngleDeg() + 2, s.widthMm())));
    for (int i = 0; i < stations.size(); i++) {
      var here = one.stations().get(i);
      if (here.kind() == FlangeKind.PLAIN) {
        assertThat(wider.stations().get(i).edgeStrain()).isZero();
        continue;
      }
      assertThat(size(wider, i)).isGreaterThan(size(one, i));
      assertThat(size(further, i)).isGreaterThan(size(one, i));
    }
    assertThat(wider.takeOutMm()).isGreaterThanOrEqualTo(one.takeOutMm());
    assertThat(wider.putInMm()).isGreaterThanOrEqualTo(one.putInMm());
  }

  private static double size(FlangeFigures figures, int i) {
    return Math.abs(figures.stations().get(i).edgeStrain());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void any_stations_within_the_ranges_give_finite_figures_or_a_refusal_with_its_reason(int seed)
      throws ReflectiveOperationException {
    var random = new Random(1000 + seed);
    int made = 0;
    for (int i = 0; i < 50; i++) {
      var stations = anything(random);
      FlangeFigures figures;
      try {
        figures = figures(stations);
      } catch (FormingException refusal) {
        assertThat(refusal.reason()).isNotNull();
        assertThat(refusal.field()).isNotBlank();
        assertThat(refusal).hasMessageNotContaining("NaN");
        continue;
      }
      made++;
      assertFinite(figures, FlangeFigures.class);
      for (var station : figures.stations()) {
        assertFinite(station.section(), FlangeSection.class);
        assertThat(station.ruffleRatio()).isFinite();
        assertThat(station.splitUtilisation()).isFinite();
        assertThat(station.blockAngleDeg()).isFinite();
      }
    }
    assertThat(made).as("draws that are not all refused").isBetween(3, 47);
  }

  /** A straight run's radii are infinite by definition; nothing else may be. */
  private static void assertFinite(Object figures, Class<?> record)
      throws ReflectiveOperationException {
    boolean plain = figures instanceof FlangeSection s && s.kind() == FlangeKind.PLAIN;
    for (RecordComponent figure : record.getRecordComponents()) {
      if (figure.getAccessor().invoke(figures) instanceof Double value) {
        assertThat(value).as(figure.getName()).isNotNaN();
        if (!(plain && figure.getName().contains("Radius"))) {
          assertThat(value).as(figure.getName()).isFinite();
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e7, 1e13})
  void each_number_outside_its_range_is_refused_by_its_own_name(double bad) {
    assertRefused("xMm", () -> new Station(1, bad, 0, 90, 20));
    assertRefused("yMm", () -> new Station(1, 0, bad, 90, 20));
    assertRefused("bendAngleDeg", () -> new Station(1, 0, 0, bad, 20));
    assertRefused("widthMm", () -> new Station(1, 0, 0, 90, bad));
    assertRefused("thicknessMm", () -> new Sheet(bad, 3, 0.4, 1));
    assertRefused("insideBendRadiusMm", () -> new Sheet(1, bad, 0.4, 1));
    assertRefused("kFactor", () -> new Sheet(1, 3, bad, 1));
    assertRefused("anisotropy", () -> new Sheet(1, 3, 0.4, bad));
    assertRefused("elongationPercent", () -> new MetalValues(bad, null, null, null, null, null));
    assertRefused("proofMpa", () -> new MetalValues(null, bad, null, null, null, null));
    assertRefused("utsMpa", () -> new MetalValues(null, null, bad, null, null, null));
    assertRefused("youngMpa", () -> new MetalValues(null, null, null, bad, null, null));
    assertRefused("densityKgM3", () -> new MetalValues(null, null, null, null, bad, null));
    assertRefused("minBendRadiusMm", () -> new MetalValues(null, null, null, null, null, bad));
    for (var kind : List.of(FlangeKind.SHRINK, FlangeKind.STRETCH)) {
      assertRefused("contourRadiusMm", () -> FlangeSection.of(kind, bad, SHEET, 20, 90));
      assertRefused("flangeWidthMm", () -> FlangeSection.of(kind, 300, SHEET, bad, 90));
      assertRefused("bendAngleDeg", () -> FlangeSection.of(kind, 300, SHEET, 20, bad));
    }
    assertRefused("edgeThicknessMm", () -> EdgeGauge.strainOfThickness(bad, SHEET));
    assertRefused("toleranceMm", () -> Contour.fitted(wavy(new Random(1)), bad));
  }

  private static void assertRefused(String field, ThrowingCallable call) {
    var refusal = catchThrowableOfType(FormingException.class, call);
    assertThat(refusal).as("a refusal of %s", field).isNotNull();
    assertThat(refusal.field()).isEqualTo(field);
  }

  private static FlangeFigures figures(List<Station> stations) {
    return FlangeFigures.of(Contour.of(stations), SHEET, METAL, EdgeCondition.FILED);
  }

  /** A contour of waves with radii above 250 mm, unevenly spaced, of varying angle and width. */
  private static List<Station> wavy(Random random) {
    double[] size = {random.nextDouble(), random.nextDouble(), random.nextDouble()};
    double[] phase = {random.nextDouble(6), random.nextDouble(6), random.nextDouble(6)};
    int count = random.nextInt(8, 80);
    double[] at = new double[count];
    for (int i = 1; i < count; i++) {
      at[i] = at[i - 1] + 600.0 / (count - 1) * random.nextDouble(0.5, 1.5);
    }
    var points =
        Loft.withCurvature(
            at,
            s ->
                IntStream.range(0, 3)
                        .mapToDouble(j -> size[j] * Math.sin(phase[j] + s * (j + 1) / 150))
                        .sum()
                    / 750);
    return IntStream.range(0, count)
        .mapToObj(
            i ->
                new Station(
                    i + 1,
                    points.get(i).xMm(),
                    points.get(i).yMm(),
                    random.nextDouble(70, 87),
                    random.nextDouble(12, 30)))
        .toList();
  }

  /** Mostly a walk that turns a little, of any step, angle and width; now and then pure chance. */
  private static List<Station> anything(Random random) {
    boolean chance = random.nextInt(4) == 0;
    double step = Math.exp(random.nextDouble(Math.log(0.02), Math.log(1_000)));
    double heading = random.nextDouble(6);
    double x = 0;
    double y = 0;
    var stations = new ArrayList<Station>();
    for (int i = 0; i < random.nextInt(2, 40); i++) {
      heading += random.nextGaussian() * 0.1;
      x = chance ? random.nextDouble(-1e5, 1e5) : x + step * Math.cos(heading);
      y = chance ? random.nextDouble(-1e5, 1e5) : y + step * Math.sin(heading);
      double angle = random.nextDouble(0.001, 164.999);
      stations.add(new Station(i + 1, x, y, angle, random.nextDouble(0.001, 120)));
    }
    return stations;
  }

  private static List<Station> changed(List<Station> stations, UnaryOperator<Station> change) {
    return stations.stream().map(change).toList();
  }

  private static List<Station> renumbered(List<Station> stations) {
    return IntStream.range(0, stations.size())
        .mapToObj(
            i -> {
              var s = stations.get(i);
              return new Station(i + 1, s.xMm(), s.yMm(), s.bendAngleDeg(), s.widthMm());
            })
        .toList();
  }

  private static Station at(Station s, double x, double y) {
    return new Station(s.number(), x, y, s.bendAngleDeg(), s.widthMm());
  }

  private static Station with(Station s, double bendAngleDeg, double widthMm) {
    return new Station(s.number(), s.xMm(), s.yMm(), bendAngleDeg, widthMm);
  }
}
