package dev.flangewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The marks as they tell the states apart without colour, on a quarter ring about (0, 0). */
class StateMarkTest {

  private static final double OUTER = 100;
  private static final double INNER = 80;

  static List<Spot> arc(double radius) {
    List<Spot> spots = new ArrayList<>();
    for (int degrees = 0; degrees <= 90; degrees++) {
      double a = Math.toRadians(degrees);
      spots.add(new Spot(radius * Math.cos(a), radius * Math.sin(a)));
    }
    return spots;
  }

  private static List<Spot> back(List<Spot> spots) {
    List<Spot> back = new ArrayList<>(spots);
    Collections.reverse(back);
    return back;
  }

  private static Band ring() {
    return Band.between(List.of(back(arc(INNER)), arc(OUTER)));
  }

  private static Drawn mark(Band band, SegmentState state, double share) {
    Svg svg = Svg.picture("m", "drawing", Box.of(200, 200), "Mark", "One mark");
    StateMark.draw(svg, band, state, share);
    return Drawn.of(svg.written());
  }

  private static double radius(Spot spot) {
    return Math.hypot(spot.x(), spot.y());
  }

  private static double area(List<Spot> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Spot a = ring.get(i);
      Spot b = ring.get((i + 1) % ring.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return Math.abs(twice) / 2;
  }

  @ParameterizedTest
  @EnumSource
  void every_state_has_its_class_and_an_outline(SegmentState state) {
    Drawn drawn = mark(ring(), state, 0.5);
    assertThat(
            drawn.withClass(
                "s-" + state.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')))
        .hasSize(1);
    assertThat(drawn.withClass("d-segment")).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.25, 0.5, 0.9, 1})
  void a_segment_in_work_is_filled_in_proportion_to_what_is_done(double share) {
    Drawn drawn = mark(ring(), SegmentState.IN_WORK, share);
    double whole = area(Drawn.spots(drawn.withClass("d-segment").get(0)));
    double done = area(Drawn.spots(drawn.withClass("d-done").get(0)));
    // Half a degree of the quarter ring, where the two edges are cut at a chord: 0.5/90.
    assertThat(done / whole).isCloseTo(share, within(0.006));
  }

  @Test
  void nothing_is_filled_before_the_first_stage_and_never_more_than_all() {
    assertThat(mark(ring(), SegmentState.IN_WORK, 0).withClass("d-done")).isEmpty();
    Drawn over = mark(ring(), SegmentState.IN_WORK, 7);
    assertThat(area(Drawn.spots(over.withClass("d-done").get(0))))
        .isCloseTo(area(Drawn.spots(over.withClass("d-segment").get(0))), within(1.0));
  }

  @Test
  void a_held_segment_has_a_bar_across_each_end() {
    List<Spot> bars = Drawn.spots(mark(ring(), SegmentState.HELD, 0).withClass("d-stop").get(0));
    assertThat(bars).hasSize(4);
    for (int i = 0; i < 4; i += 2) {
      assertThat(radius(bars.get(i))).isGreaterThan(OUTER);
      assertThat(radius(bars.get(i + 1))).isLessThan(INNER);
    }
    assertThat(bars.get(0).y()).isLessThan(20);
    assertThat(bars.get(2).x()).isLessThan(20);
  }

  @Test
  void the_tick_of_a_concession_stands_on_the_outer_side() {
    Drawn drawn = mark(ring(), SegmentState.CONCESSION, 1);
    assertThat(Drawn.spots(drawn.withClass("d-tick").get(0)))
        .hasSize(3)
        .allSatisfy(spot -> assertThat(radius(spot)).isGreaterThan(OUTER));
    assertThat(mark(ring(), SegmentState.ACCEPTED, 1).withClass("d-tick")).isEmpty();
  }

  @Test
  void the_strokes_of_a_scrapped_piece_cross_inside_it() {
    List<Spot> s = Drawn.spots(mark(ring(), SegmentState.SCRAPPED, 0).withClass("d-cross").get(0));
    Spot one = s.get(0).towards(s.get(1), 0.5);
    Spot other = s.get(2).towards(s.get(3), 0.5);
    assertThat(one.distance(other)).isLessThan(0.02);
    assertThat(radius(one)).isBetween(INNER, OUTER);
    assertThat(s.get(0).directionTo(s.get(1)).dot(s.get(2).directionTo(s.get(3))))
        .isCloseTo(0, within(0.01));
  }

  @Test
  void the_edges_may_run_either_way() {
    Band alike = Band.between(List.of(arc(OUTER), arc(INNER)));
    assertThat(alike.outline()).isEqualTo(ring().outline());
  }

  @ParameterizedTest
  @EnumSource
  void one_edge_alone_carries_the_mark_too(SegmentState state) {
    Band edge = Band.between(List.of(arc(OUTER), List.of()));
    assertThat(edge.isOpen()).isTrue();
    Drawn drawn = mark(edge, state, 0.5);
    assertThat(drawn.withClass("d-edge")).isNotEmpty();
    assertThat(drawn.withClass("d-segment").get(0).getAttribute("d")).doesNotContain("Z");
  }

  @Test
  void a_segment_without_an_edge_is_refused() {
    assertThatThrownBy(() -> Band.between(List.of(List.of(new Spot(0, 0)))))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void every_state_has_its_word() {
    assertThat(SegmentState.values())
        .extracting(SegmentState::word)
        .containsExactly("Not begun", "In work", "Held", "Accepted", "Concession", "Scrapped");
  }
}
