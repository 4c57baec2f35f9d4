package dev.flangewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.flangewright.drawing.ParetoChart.Cause;
import dev.flangewright.drawing.ProgressBars.Row;
import dev.flangewright.drawing.ProgressBars.Share;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class ChartsTest {

  private static Drawn pareto(List<Cause> causes) {
    return Drawn.of(ParetoChart.of("p", "Scrapped pieces by cause", "pieces", causes));
  }

  private static List<Double> widths(List<Element> bars) {
    return bars.stream().map(bar -> Drawn.number(bar, "width")).toList();
  }

  @Test
  void causes_stand_most_first_with_bars_in_proportion() {
    Drawn drawn = pareto(List.of(new Cause("Blank short", 2), new Cause("Edge burred", 6)));
    List<Double> widths = widths(drawn.withClass("d-column"));
    assertThat(widths.get(0)).isCloseTo(3 * widths.get(1), within(0.05));
    assertThat(drawn.words()).containsSubsequence("Edge burred", "6", "Blank short", "2");
  }

  @Test
  void the_line_adds_the_causes_up_to_all_of_them() {
    Drawn drawn = pareto(List.of(new Cause("One", 5), new Cause("Two", 3), new Cause("Three", 2)));
    List<Spot> line = Drawn.spots(drawn.withClass("d-curve").get(0));
    Element first = drawn.withClass("d-column").get(0);
    double zero = Drawn.number(first, "x");
    double all = line.get(2).x() - zero;
    assertThat((line.get(0).x() - zero) / all).isCloseTo(0.5, within(0.001));
    assertThat((line.get(1).x() - zero) / all).isCloseTo(0.8, within(0.001));
    assertThat(line.get(0).x()).isCloseTo(zero + Drawn.number(first, "width"), within(0.02));
  }

  @Test
  void causes_beyond_what_can_be_read_are_summed_up_and_none_is_lost() {
    List<Cause> many =
        IntStream.rangeClosed(1, 14).mapToObj(i -> new Cause("Cause " + i, i)).toList();
    Drawn drawn = pareto(many);
    assertThat(drawn.withClass("d-column")).hasSize(8);
    assertThat(drawn.words()).contains("7 other causes", "28");
    assertThat(drawn.words().get(1)).startsWith("105 pieces");
  }

  @Test
  void a_cause_that_never_struck_and_a_chart_of_nothing_are_left_out() {
    assertThat(ParetoChart.of("p", "t", "pieces", List.of(new Cause("Never", 0)))).isEmpty();
    assertThat(ProgressBars.of("b", "t", List.of())).isEmpty();
  }

  @Test
  void a_long_cause_is_broken_into_lines_and_a_hostile_one_stays_text() {
    Drawn drawn =
        pareto(
            List.of(
                new Cause("Overworked, cracked at the bend line", 2),
                new Cause("<script>alert(1)</script>", 1)));
    assertThat(drawn.words()).contains("Overworked, cracked", "at the bend line");
  }

  @Test
  void a_bar_is_stacked_in_proportion_and_each_state_has_its_own_hatch() {
    List<Share> shares =
        List.of(
            new Share(SegmentState.ACCEPTED, 30, "accepted"),
            new Share(SegmentState.CONCESSION, 4, "concession"),
            new Share(SegmentState.IN_WORK, 10, "in work"),
            new Share(SegmentState.HELD, 6, "held"),
            new Share(SegmentState.SCRAPPED, 0, "scrapped"),
            new Share(SegmentState.NOT_BEGUN, 10, "not begun"));
    Drawn drawn =
        Drawn.of(
            ProgressBars.of(
                "b",
                "By frame",
                List.of(
                    new Row("F07", "34 of 60 accepted", shares),
                    new Row(
                        "F08",
                        "1 of 30",
                        List.of(new Share(SegmentState.IN_WORK, 30, "in work"))))));
    List<Double> widths = widths(drawn.withClass("d-bar"));
    assertThat(widths).hasSize(6);
    assertThat(widths.get(0)).isCloseTo(3 * widths.get(2), within(0.05));
    assertThat(widths.get(5)).isCloseTo(widths.get(0), within(0.05));
    assertThat(drawn.words()).contains("F07", "34 of 60 accepted", "30", "F07: 6 held");
    List<String> fills =
        drawn.named("rect").stream()
            .map(e -> e.getAttribute("fill"))
            .filter(fill -> !fill.isEmpty())
            .distinct()
            .toList();
    List<String> hatches =
        drawn.named("pattern").stream().map(e -> "url(#" + e.getAttribute("id") + ")").toList();
    assertThat(fills).hasSize(3).isSubsetOf(hatches);
  }
}
