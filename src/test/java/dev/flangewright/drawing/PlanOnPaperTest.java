package dev.flangewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanOnPaperTest {

  static List<Spot> circle(double x, double y, double radius) {
    return IntStream.range(0, 72)
        .mapToObj(i -> Math.toRadians(5 * i))
        .map(a -> new Spot(x + radius * Math.cos(a), y + radius * Math.sin(a)))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({"960, 300", "300, 960", "500, 500"})
  void a_circle_stays_round_and_inside_whatever_the_paper(double width, double height) {
    List<Spot> plan = circle(700, -300, 250);
    Box paper = new Box(10, 20, 10 + width, 20 + height);
    Box drawn = Box.around(Fit.into(paper, Box.around(plan)).all(plan));
    assertThat(drawn.width()).isCloseTo(drawn.height(), within(1e-6));
    assertThat(drawn.width()).isCloseTo(Math.min(width, height), within(1e-6));
    assertThat(drawn.centre().x()).isCloseTo(paper.centre().x(), within(1e-6));
    assertThat(drawn.centre().y()).isCloseTo(paper.centre().y(), within(1e-6));
  }

  @Test
  void up_in_the_plan_is_up_on_the_paper() {
    Fit fit = Fit.into(Box.of(100, 100), new Box(0, 0, 10, 10));
    assertThat(fit.at(0, 10).y()).isLessThan(fit.at(0, 0).y());
    assertThat(fit.at(10, 0).x()).isGreaterThan(fit.at(0, 0).x());
  }

  @Test
  void a_plan_without_breadth_still_has_a_place() {
    Fit fit = Fit.into(Box.of(100, 100), new Box(5, 5, 5, 5));
    assertThat(fit.at(5, 5)).isEqualTo(new Spot(50, 50));
  }

  @ParameterizedTest
  @CsvSource({"0, 612, 5, 200", "-4.9, 0.8, 5, 2", "0, 0.031, 5, 0.01", "20.4, 21.6, 5, 0.5"})
  void an_axis_is_marked_at_round_values_inside_it(
      double from, double to, int wanted, double step) {
    Scale scale = new Scale(from, to, 0, 100);
    List<Double> marks = scale.marks(wanted);
    assertThat(marks).hasSizeBetween(2, wanted + 1);
    for (int i = 0; i < marks.size(); i++) {
      assertThat(marks.get(i)).isBetween(from - 1e-9, to + 1e-9);
      assertThat(marks.get(i) / step).isCloseTo(Math.rint(marks.get(i) / step), within(1e-9));
      assertThat(scale.at(marks.get(i))).isBetween(-1e-6, 100 + 1e-6);
    }
    assertThat(marks.get(1) - marks.get(0)).isCloseTo(step, within(1e-9));
  }

  @Test
  void an_axis_without_length_can_be_asked_all_the_same() {
    Scale scale = new Scale(3, 3, 0, 100);
    assertThat(scale.at(3)).isZero();
    assertThat(scale.marks(5)).hasSize(1);
  }
}
