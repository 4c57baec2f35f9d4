package dev.flangewright.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Drawn;
import dev.flangewright.drawing.SegmentState;
import dev.flangewright.drawing.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The hull and a frame drawn from rings that are circles. */
class HullDrawingTest {

  private static final SegmentState[] STATES = SegmentState.values();

  private static HullSegment segment(int frame, int number, int of, double radius) {
    SegmentState state = STATES[number % STATES.length];
    double from = 2 * Math.PI * number / of;
    double to = 2 * Math.PI * (number + 1) / of;
    return new HullSegment(
        100L * frame + number,
        "TW-F%03d-S%d".formatted(frame, number),
        "F%03d".formatted(frame),
        400.0 * frame,
        List.of(arc(radius, from, to), arc(radius - 60, to, from)),
        state,
        0.5,
        state.word());
  }

  private static List<Spot> arc(double radius, double from, double to) {
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i <= 20; i++) {
      double a = from + (to - from) * i / 20;
      spots.add(new Spot(radius * Math.cos(a), radius * Math.sin(a)));
    }
    return spots;
  }

  private static List<HullSegment> hull(int frames, int segments) {
    List<HullSegment> hull = new ArrayList<>();
    for (int frame = 1; frame <= frames; frame++) {
      for (int number = 0; number < segments; number++) {
        hull.add(segment(frame, number, segments, 300 + 20 * (frame % 7)));
      }
    }
    return hull;
  }

  private static Drawn drawn(List<HullSegment> hull) {
    return Drawn.of(HullDrawing.of("hull", "/shop", hull));
  }

  private static Box ring(Drawn drawn, String frame) {
    List<Spot> spots = new ArrayList<>();
    for (Element link : drawn.named("a")) {
      if (link.getElementsByTagName("title").item(0).getTextContent().contains("-" + frame + "-")) {
        Element outline = (Element) link.getElementsByTagName("path").item(0);
        spots.addAll(Drawn.spots(outline));
      }
    }
    return Box.around(spots);
  }

  @Test
  void every_segment_is_a_link_to_its_part_and_says_its_number_and_state() {
    Drawn drawn = drawn(hull(13, 5));
    assertThat(drawn.named("a")).hasSize(65);
    Element link = drawn.named("a").get(1);
    assertThat(link.getAttribute("href")).isEqualTo("/shop/parts/101");
    assertThat(link.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo("TW-F001-S1: In work");
    assertThat(drawn.root().getAttribute("role")).isEqualTo("group");
  }

  @Test
  void frames_stand_in_order_along_the_hull_and_do_not_hide_each_other() {
    List<HullSegment> hull = new ArrayList<>(hull(13, 5));
    java.util.Collections.reverse(hull);
    Drawn drawn = drawn(hull);
    for (int frame = 1; frame < 13; frame++) {
      Box here = ring(drawn, "F%03d".formatted(frame));
      Box next = ring(drawn, "F%03d".formatted(frame + 1));
      assertThat(next.minX()).as("after frame %d", frame).isGreaterThan(here.maxX());
    }
  }

  @Test
  void all_rings_are_drawn_at_one_scale_and_seen_at_one_angle() {
    Drawn drawn = drawn(hull(13, 5));
    Box small = ring(drawn, "F007");
    Box large = ring(drawn, "F006");
    assertThat(large.width() / small.width()).isCloseTo(420.0 / 300, within(0.01));
    assertThat(large.height() / small.height()).isCloseTo(420.0 / 300, within(0.01));
    // A circle seen at an angle: half height r·√(1 + slope²), half breadth r·shortened.
    assertThat(large.width() / large.height())
        .isCloseTo(HullRow.SHORTENED / Math.hypot(1, HullRow.SLOPE), within(0.005));
  }

  @Test
  void uneven_distances_between_frames_are_seen() {
    List<HullSegment> hull = new ArrayList<>();
    int[] positions = {0, 400, 2000};
    for (int i = 0; i < 3; i++) {
      HullSegment s = segment(i + 1, 0, 1, 300);
      hull.add(
          new HullSegment(
              i, s.partNumber(), s.frameCode(), positions[i], s.edges(), s.state(), 0, "x"));
    }
    Drawn drawn = drawn(hull);
    double first = ring(drawn, "F002").minX() - ring(drawn, "F001").minX();
    double second = ring(drawn, "F003").minX() - ring(drawn, "F002").minX();
    assertThat(second).isGreaterThan(1.2 * first);
  }

  @Test
  void a_long_hull_is_laid_out_in_rows_inside_the_paper() {
    Drawn drawn = drawn(hull(104, 24));
    assertThat(drawn.named("a")).hasSize(104 * 24);
    assertThat(drawn.named("a").get(0).getAttribute("tabindex")).isEqualTo("-1");
    double height = Double.parseDouble(drawn.root().getAttribute("viewBox").split(" ")[3]);
    double lastRow = 0;
    for (Element outline : drawn.withClass("d-segment")) {
      Box box = Box.around(Drawn.spots(outline));
      assertThat(box.minX()).isGreaterThan(0);
      assertThat(box.maxX()).isLessThan(960);
      assertThat(box.maxY()).isLessThan(height);
      lastRow = Math.max(lastRow, box.maxY());
    }
    assertThat(ring(drawn, "F001").maxY()).isLessThan(lastRow / 4);
  }

  @Test
  void frame_codes_are_thinned_out_when_they_have_no_room() {
    assertThat(codes(drawn(hull(6, 4)))).isEqualTo(6);
    assertThat(codes(drawn(hull(16, 4)))).isBetween(8L, 16L);
  }

  private static long codes(Drawn drawn) {
    return drawn.named("text").size();
  }

  @Test
  void a_segment_without_a_contour_is_counted_and_named_as_not_drawn() {
    List<HullSegment> hull = new ArrayList<>(hull(2, 3));
    hull.add(
        new HullSegment(
            9, "TW-F002-S9", "F002", 800, List.of(), SegmentState.NOT_BEGUN, 0, "Not begun"));
    Drawn drawn = drawn(hull);
    assertThat(drawn.named("a")).hasSize(6);
    assertThat(drawn.words().get(1))
        .startsWith("7 segments: ")
        .endsWith("Without a contour, so not drawn: 1.");
    assertThat(HullDrawing.of("h", "", List.of())).isEmpty();
    assertThat(HullDrawing.of("h", "", hull.subList(6, 7))).isEmpty();
  }

  @Test
  void names_stay_text() {
    HullSegment s = segment(1, 0, 1, 300);
    String number = "<script>alert(1)</script>";
    HullSegment hostile =
        new HullSegment(1, number, "\"><b>", 0, s.edges(), SegmentState.HELD, 0, "<i>");
    for (String svg :
        List.of(
            HullDrawing.of("h", "", List.of(hostile)),
            FrameDrawing.of("f", "", List.of(hostile)))) {
      assertThat(svg).doesNotContain("<script").doesNotContain("<b>").doesNotContain("<i>");
      assertThat(Drawn.of(svg).words()).contains(number + ": <i>");
    }
  }

  @Test
  void a_sketch_is_read_as_an_edge() {
    assertThat(HullSegment.edge("0.0,1.5 -2.0,3.0"))
        .containsExactly(new Spot(0, 1.5), new Spot(-2, 3));
    assertThat(HullSegment.edge("")).isEmpty();
  }

  @Test
  void a_frame_is_drawn_square_on_with_every_part_number_and_state_on_a_leader_line() {
    List<HullSegment> frame = hull(1, 5);
    Drawn drawn = Drawn.of(FrameDrawing.of("frame", "", frame));
    Box ring = ring(drawn, "F001");
    assertThat(ring.width()).isCloseTo(ring.height(), within(0.03));
    assertThat(drawn.withClass("d-leader")).hasSize(5);
    frame.forEach(s -> assertThat(drawn.words()).contains(s.partNumber(), s.state().word()));
  }

  @Test
  void part_numbers_beside_a_frame_do_not_stand_on_each_other() {
    for (int segments : List.of(1, 5, 9, 24, 60)) {
      Drawn drawn = Drawn.of(FrameDrawing.of("frame", "", hull(1, segments)));
      double height = Double.parseDouble(drawn.root().getAttribute("viewBox").split(" ")[3]);
      for (String anchor : List.of("start", "end")) {
        double[] lines =
            drawn.withClass("d-label").stream()
                .filter(e -> e.getAttribute("text-anchor").equals(anchor))
                .mapToDouble(e -> Drawn.number(e, "y"))
                .sorted()
                .toArray();
        assertThat(Arrays.stream(lines)).allMatch(y -> y > 10 && y < height);
        for (int i = 1; i < lines.length; i++) {
          assertThat(lines[i] - lines[i - 1]).as("%d segments", segments).isGreaterThan(52);
        }
      }
    }
  }

  @Test
  void two_frames_are_not_one() {
    assertThatThrownBy(() -> FrameDrawing.of("f", "", hull(2, 2)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
