package dev.flangewright.overview.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** The webs of a frame, out of the written file, laid together by a geometry library. */
class RingTest {

  /** Stations are written to 0.01 mm; along a joint that can make a sliver, never an overlap. */
  private static final double SLIVER_MM2 = 1;

  @Test
  void the_segments_of_a_frame_close_its_ring_without_overlapping() {
    Map<String, List<Polygon>> frames = new LinkedHashMap<>();
    webs()
        .forEach(
            (part, web) -> frames.computeIfAbsent(frame(part), f -> new ArrayList<>()).add(web));
    assertThat(frames).hasSize(13);
    frames.forEach(
        (frame, webs) -> {
          var ring = UnaryUnionOp.union(webs);
          double sum = webs.stream().mapToDouble(Polygon::getArea).sum();
          assertThat(ring.getGeometryType()).as(frame).isEqualTo("Polygon");
          assertThat(((Polygon) ring).getNumInteriorRing()).as(frame).isGreaterThanOrEqualTo(1);
          assertThat(sum - ring.getArea()).as(frame).isLessThan(SLIVER_MM2);
        });
  }

  @Test
  void a_right_hand_segment_is_the_mirror_image_of_the_left_hand_one() {
    Map<String, Polygon> webs = webs();
    long pairs = webs.keySet().stream().filter(part -> part.endsWith("L")).count();
    assertThat(pairs).isEqualTo(4 + 9 * 2);
    webs.forEach(
        (part, left) -> {
          if (part.endsWith("L")) {
            Polygon right = webs.get(part.replaceAll("L$", "R"));
            assertThat(right.getArea()).as(part).isEqualTo(left.getArea(), within(1));
            assertThat(right.getCentroid().getX())
                .as(part)
                .isEqualTo(-left.getCentroid().getX(), within(0.05));
          }
        });
  }

  private static org.assertj.core.data.Offset<Double> within(double offset) {
    return org.assertj.core.data.Offset.offset(offset);
  }

  private static String frame(String part) {
    return part.substring(0, 6);
  }

  /** Outer and inner mould line of each part, joined end to end. */
  private static Map<String, Polygon> webs() {
    Map<String, List<Coordinate>> corners = new LinkedHashMap<>();
    DemoFiles.contours()
        .lines()
        .skip(1)
        .map(line -> line.split(",", -1))
        .forEach(
            cell ->
                corners
                    .computeIfAbsent(cell[0], part -> new ArrayList<>())
                    .add(new Coordinate(Double.parseDouble(cell[3]), Double.parseDouble(cell[4]))));
    Map<String, Polygon> webs = new LinkedHashMap<>();
    corners.forEach(
        (part, ring) -> {
          ring.add(ring.get(0));
          webs.put(part, new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new)));
        });
    return webs;
  }
}
