package dev.flangewright.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.flangewright.forming.FlangeKind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A drawn path becomes lines that a contour is typed in with. */
class ReadPathTest {

  /** A third of a circle of 500 mm, drawn from right to left over the top, as one sees it. */
  private static final String ARCH = "M 433.0127 -250 A 500 500 0 0 0 -433.0127 -250";

  private static PathEntry entry(String path, YAxis yAxis, boolean reversed) {
    return new PathEntry(path, "20", "88.5", "", yAxis.name(), reversed);
  }

  private static WrittenStations read(PathEntry entry) {
    Faults faults = new Faults();
    WrittenStations stations = ContourLines.read(ReadPath.of(entry).lines(), faults);
    assertThat(faults.list()).isEmpty();
    return stations;
  }

  @Test
  void an_arch_stands_as_it_is_seen_and_its_web_lies_below_it() {
    ReadPath.Read read = ReadPath.of(entry(ARCH, YAxis.DOWN, false));
    // 2/3·π·500 mm = 1047.2 mm: 53 gaps of at most 20 mm.
    assertThat(read.drawn().contour().lengthMm()).isCloseTo(1047.198, within(0.01));
    assertThat(read.drawn().contour().kind()).isEqualTo(FlangeKind.SHRINK);
    assertThat(read.drawn().corners()).isEmpty();
    List<WrittenStation> stations = read(entry(ARCH, YAxis.DOWN, false)).list();
    assertThat(stations).hasSize(54);
    assertThat(ContourLines.line(stations.get(0))).isEqualTo("1, 433.013, 250.000, 88.5");
    for (WrittenStation station : stations) {
      double radius = Math.hypot(station.xMm().value(), station.yMm().value());
      assertThat(radius).isCloseTo(500, within(0.001));
      assertThat(station.yMm().value()).isGreaterThan(249.9);
      assertThat(station.widthMm()).isNull();
    }
  }

  @Test
  void y_upwards_takes_the_numbers_as_they_are() {
    List<WrittenStation> stations = read(entry(ARCH, YAxis.UP, false)).list();
    assertThat(stations.get(0).yMm().text()).isEqualTo("-250.000");
    assertThat(ReadPath.of(entry(ARCH, YAxis.UP, false)).drawn().contour().kind())
        .as("in a mirror the turn is the other")
        .isEqualTo(FlangeKind.STRETCH);
  }

  @Test
  void reversed_the_web_lies_on_the_other_side_and_stations_count_from_the_other_end() {
    PathEntry reversed = entry(ARCH, YAxis.DOWN, true);
    assertThat(ReadPath.of(reversed).drawn().contour().kind()).isEqualTo(FlangeKind.STRETCH);
    List<WrittenStation> stations = read(reversed).list();
    assertThat(stations.get(0).number()).isEqualTo(1);
    assertThat(stations.get(0).xMm().text()).isEqualTo("-433.013");
  }

  @Test
  void a_corner_gets_its_station_and_is_told() {
    PathEntry bent = entry("M 0 0 L 95 0 L 190 -50", YAxis.DOWN, false);
    assertThat(ReadPath.of(bent).drawn().corners())
        .singleElement()
        .satisfies(
            corner -> {
              assertThat(corner.turnDeg())
                  .isCloseTo(Math.toDegrees(Math.atan2(50, 95)), within(0.01));
              assertThat(read(bent).list().get(corner.stationNumber() - 1).xMm().text())
                  .isEqualTo("95.000");
            });
  }

  @Test
  void a_width_stands_on_every_line() {
    PathEntry wide = new PathEntry(ARCH, "200", "90", "24.0", "DOWN", false);
    assertThat(read(wide).list())
        .allSatisfy(station -> assertThat(station.widthMm()).isEqualTo(new Written("24.0")));
  }

  @ParameterizedTest
  @CsvSource({
    "M 0 0, 20, 90, '', DOWN, path",
    "M 0 0 L ten 0, 20, 90, '', DOWN, path",
    "'', 20, 90, '', DOWN, path",
    "M 0 0 L 100000 0, 1, 90, '', DOWN, path",
    "M 0 0 L 100 0 L 100 50 L 50 -50, 20, 90, '', DOWN, path",
    "M 0 0 L 100 0, 0, 90, '', DOWN, spacing_mm",
    "M 0 0 L 100 0, 20, 165, '', DOWN, bend_angle_deg",
    "M 0 0 L 100 0, 20, 90, 501, DOWN, width_mm",
    "M 0 0 L 100 0, 20, 90, '', SIDEWAYS, y_axis"
  })
  void what_cannot_be_taken_is_told_beside_its_field(
      String path, String spacing, String angle, String width, String yAxis, String field) {
    PathEntry entry = new PathEntry(path, spacing, angle, width, yAxis, false);
    DrawingRefused refused = catchThrowableOfType(DrawingRefused.class, () -> ReadPath.of(entry));
    assertThat(refused.faults()).extracting(Fault::field).containsExactly(field);
  }

  @Test
  void a_path_without_end_is_not_read() {
    PathEntry endless = entry("M0 0" + "l1 0".repeat(25_001), YAxis.DOWN, false);
    DrawingRefused refused = catchThrowableOfType(DrawingRefused.class, () -> ReadPath.of(endless));
    assertThat(refused).hasMessageContaining("longer than 100000 characters");
  }
}
