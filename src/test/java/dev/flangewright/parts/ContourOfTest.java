package dev.flangewright.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.forming.Contour;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.Station;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A flange's tolerance decides whether its stations are exact. */
class ContourOfTest {

  private static FlangeDrawing within(@Nullable String tolerance) {
    return new FlangeDrawing(
        FlangeKind.SHRINK,
        new Written("18"),
        new Written("22"),
        tolerance == null ? null : new Written(tolerance));
  }

  private static WrittenStations stations(List<String> lines) {
    Faults faults = new Faults();
    WrittenStations stations = ContourLines.read(String.join("\n", lines), faults);
    faults.refuseIfAny();
    return stations;
  }

  @Test
  void without_a_tolerance_the_contour_runs_through_the_stations() {
    WrittenStations read = stations(Digitised.lines(40, 1));
    for (String tolerance : new String[] {null, "0", "0.00"}) {
      Contour contour = ContourOf.atWorkingWidth(read, within(tolerance));
      assertThat(contour.stations().get(7).xMm()).isEqualTo(read.list().get(7).xMm().value());
    }
  }

  @Test
  void with_one_the_contour_is_the_fair_curve_at_both_widths() {
    WrittenStations read = stations(Digitised.lines(40, 1));
    Contour working = ContourOf.atWorkingWidth(read, within("0.6"));
    Contour finished = ContourOf.atFinishedWidth(read, within("0.6"));
    assertThat(working.stations().get(7).xMm()).isNotEqualTo(read.list().get(7).xMm().value());
    assertThat(finished.points()).isEqualTo(working.points());
    assertThat(finished.lengthMm()).isEqualTo(working.lengthMm());
    assertThat(working.stations()).extracting(Station::widthMm).containsOnly(22.0);
    assertThat(finished.stations()).extracting(Station::widthMm).containsOnly(18.0);
    for (int i = 0; i < 40; i++) {
      assertThat(finished.curvaturePerMm(i)).isEqualTo(working.curvaturePerMm(i));
    }
  }

  @Test
  void a_station_keeps_its_own_width_until_it_is_trimmed() {
    List<String> lines = Digitised.lines(12, 1);
    lines.set(3, lines.get(3) + ", 12");
    lines.set(4, lines.get(4) + ", 30");
    for (String tolerance : new String[] {null, "0.6"}) {
      WrittenStations read = stations(lines);
      List<Station> working = ContourOf.atWorkingWidth(read, within(tolerance)).stations();
      List<Station> finished = ContourOf.atFinishedWidth(read, within(tolerance)).stations();
      assertThat(List.of(working.get(3).widthMm(), working.get(4).widthMm()))
          .containsExactly(12.0, 30.0);
      assertThat(List.of(finished.get(3).widthMm(), finished.get(4).widthMm()))
          .containsExactly(12.0, 18.0);
    }
  }

  @Test
  void what_was_fitted_once_is_not_fitted_again() {
    WrittenStations read = stations(Digitised.lines(40, 2));
    assertThat(ContourOf.fit(read, within("0.6"))).isSameAs(ContourOf.fit(read, within("0.60")));
    assertThat(ContourOf.fit(read, within("0.6"))).isNotSameAs(ContourOf.fit(read, within("0.8")));
  }

  @Test
  void a_tolerance_below_the_scatter_is_refused_and_names_the_point() {
    List<String> lines = Digitised.lines(40, 1);
    lines.set(17, "18, 605, -43, 90");
    assertThatThrownBy(() -> ContourOf.atWorkingWidth(stations(lines), within("0.6")))
        .isInstanceOf(FormingException.class)
        .hasMessageStartingWith("station 18: ");
  }
}
