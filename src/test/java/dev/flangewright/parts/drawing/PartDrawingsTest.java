package dev.flangewright.parts.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Drawn;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Spot;
import dev.flangewright.forming.Contour;
import dev.flangewright.forming.Cutout;
import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.Hole;
import dev.flangewright.forming.HoleKind;
import dev.flangewright.forming.MetalValues;
import dev.flangewright.forming.PartDevelopment;
import dev.flangewright.forming.Sheet;
import dev.flangewright.forming.SplitLimit;
import dev.flangewright.forming.Station;
import dev.flangewright.forming.StationFigures;
import dev.flangewright.forming.TrimCurve;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Drawings of parts whose contours are circles, ellipses and a sine wave. */
class PartDrawingsTest {

  private static final Sheet SHEET = Sheet.of(0.9, 2.4);

  /** An elongation of 8 %, as a soft limit to run past; invented. */
  private static final MetalValues METAL = new MetalValues(8.0, null, null, null, null, null);

  /** From one direction to another about (0, 0), in 3 degrees; a = b is a circle. */
  private static Contour ellipse(double a, double b, int fromDeg, int toDeg) {
    List<Station> stations = new ArrayList<>();
    int step = fromDeg < toDeg ? 3 : -3;
    for (int deg = fromDeg; step > 0 ? deg <= toDeg : deg >= toDeg; deg += step) {
      double t = Math.toRadians(deg);
      stations.add(new Station(stations.size() + 1, a * Math.cos(t), b * Math.sin(t), 90, 16));
    }
    return Contour.of(stations);
  }

  private static Contour wave() {
    List<Station> stations = new ArrayList<>();
    for (int x = 600; x >= 0; x -= 20) {
      double y = 60 * Math.sin(2 * Math.PI * x / 600);
      stations.add(new Station(stations.size() + 1, x, y, 90, 16));
    }
    return Contour.of(stations);
  }

  private static FormedEdge edge(String name, Contour contour, EdgeCondition condition) {
    FlangeFigures figures = FlangeFigures.of(contour, SHEET, METAL, condition);
    return new FormedEdge(
        name, contour, figures, SHEET.thicknessMm(), SplitLimit.strain(METAL, condition));
  }

  private static Drawn drawn(FormedEdge... edges) {
    return Drawn.of(svg("TW-F07-S3", edges));
  }

  private static String svg(String partNumber, FormedEdge... edges) {
    List<FormedEdge> list = List.of(edges);
    return SegmentDrawing.of(
        "part",
        partNumber,
        list,
        PartDevelopment.of(
            list.stream().map(FormedEdge::contour).toList(),
            list.stream().map(FormedEdge::figures).toList()));
  }

  private static final FormedEdge OUTER =
      edge("outer", ellipse(300, 300, 0, 180), EdgeCondition.POLISHED);
  private static final FormedEdge INNER =
      edge("inner", ellipse(220, 220, 180, 0), EdgeCondition.SHEARED_WITH_BURR);

  /** Teeth of the comb, leaving out the one in the key. */
  private static List<List<Spot>> teeth(Drawn drawn) {
    return drawn.withClass("d-tooth").stream()
        .filter(tooth -> tooth.getAttribute("class").contains(" "))
        .map(Drawn::spots)
        .toList();
  }

  @Test
  void a_circle_is_drawn_round() {
    Element contour = drawn(OUTER, INNER).withClass("d-contour").get(0);
    List<Spot> spots = Drawn.spots(contour);
    Box box = Box.around(spots);
    assertThat(box.width()).isCloseTo(2 * box.height(), within(0.03));
    Spot centre = spots.get(0).towards(spots.get(spots.size() - 1), 0.5);
    assertThat(spots)
        .allSatisfy(s -> assertThat(s.distance(centre)).isCloseTo(box.height(), within(0.03)));
  }

  @Test
  void every_station_has_its_tooth() {
    assertThat(teeth(drawn(OUTER, INNER)))
        .hasSize(OUTER.stations().size() + INNER.stations().size());
  }

  @Test
  void teeth_point_away_from_the_web_where_the_edge_shrinks() {
    Drawn drawn = drawn(OUTER);
    Spot centre = centre(drawn);
    assertThat(teeth(drawn))
        .allSatisfy(
            t -> assertThat(t.get(1).distance(centre)).isGreaterThan(t.get(0).distance(centre)));
  }

  @Test
  void teeth_point_into_the_web_where_the_edge_stretches() {
    Drawn drawn = drawn(INNER);
    Spot centre = centre(drawn);
    double mouldLine = Drawn.spots(drawn.withClass("d-contour").get(0)).get(0).distance(centre);
    assertThat(teeth(drawn))
        .allSatisfy(
            tooth -> {
              assertThat(tooth.get(0).distance(centre)).isLessThan(mouldLine);
              assertThat(tooth.get(1).distance(centre))
                  .isGreaterThan(tooth.get(0).distance(centre));
            });
  }

  private static Spot centre(Drawn drawn) {
    List<Spot> spots = Drawn.spots(drawn.withClass("d-contour").get(0));
    return spots.get(0).towards(spots.get(spots.size() - 1), 0.5);
  }

  @Test
  void teeth_change_sides_where_a_reverse_curve_turns_from_stretch_to_shrink() {
    FormedEdge edge = edge("outer", wave(), EdgeCondition.POLISHED);
    List<List<Spot>> teeth = teeth(drawn(edge));
    for (int i = 0; i < teeth.size(); i++) {
      double strain = edge.stations().get(i).edgeStrain();
      double up = teeth.get(i).get(0).y() - teeth.get(i).get(1).y();
      if (Math.abs(strain) > 0.005) {
        assertThat(Math.signum(up)).as("station %d", i + 1).isEqualTo(-Math.signum(strain));
      }
    }
  }

  @Test
  void teeth_are_as_long_as_the_strain_is_large_and_at_right_angles_to_an_ellipse() {
    FormedEdge edge = edge("outer", ellipse(400, 250, 3, 87), EdgeCondition.POLISHED);
    Drawn drawn = drawn(edge);
    List<List<Spot>> teeth = teeth(drawn);
    double perStrain = length(teeth.get(0)) / Math.abs(edge.stations().get(0).edgeStrain());
    for (int i = 0; i < teeth.size(); i++) {
      double strain = Math.abs(edge.stations().get(i).edgeStrain());
      assertThat(length(teeth.get(i))).isCloseTo(perStrain * strain, within(0.05));
      double t = Math.toRadians(3 + 3 * i);
      double normal = Math.atan2(400 * Math.sin(t), 250 * Math.cos(t));
      Spot tooth = teeth.get(i).get(0).directionTo(teeth.get(i).get(1));
      // Directions from stations 3 degrees apart and coordinates of two decimals: within 1 degree,
      // but at the ends, where the contour is known on one side only, within 2.
      assertThat(Math.toDegrees(Math.atan2(-tooth.y(), tooth.x())))
          .isCloseTo(Math.toDegrees(normal), within(i == 0 || i == teeth.size() - 1 ? 2.0 : 1.0));
    }
  }

  private static double length(List<Spot> tooth) {
    return tooth.get(0).distance(tooth.get(1));
  }

  @Test
  void teeth_past_the_split_limit_are_thick_and_the_limit_is_drawn() {
    long past = INNER.stations().stream().filter(INNER::isPastSplitLimit).count();
    assertThat(past).isPositive();
    Drawn drawn = drawn(OUTER, INNER);
    assertThat(drawn.withClass("d-tooth-over")).hasSize((int) past);
    assertThat(drawn.withClass("d-limit")).hasSizeGreaterThanOrEqualTo(2);
    FormedEdge shrinks = edge("outer", ellipse(300, 300, 0, 90), EdgeCondition.SHEARED_WITH_BURR);
    assertThat(drawn(shrinks).withClass("d-tooth-over")).isEmpty();
  }

  @Test
  void the_peak_is_said_with_its_strain_and_station() {
    FormedEdge edge = edge("outer", ellipse(400, 250, 3, 87), EdgeCondition.POLISHED);
    assertThat(edge.figures().peakStation()).as("tightest next to the long axis").isEqualTo(1);
    Drawn drawn = drawn(edge);
    assertThat(drawn.words()).contains("station 1");
    assertThat(drawn.words().get(1)).contains("The outer edge has to shrink most at station 1,");
  }

  @Test
  void a_straight_edge_has_no_teeth_to_speak_of_and_says_so() {
    Contour straight =
        Contour.of(List.of(new Station(1, 0, 0, 90, 16), new Station(2, 300, 0, 90, 16)));
    FormedEdge foot = edge("foot", straight, EdgeCondition.POLISHED);
    assertThat(drawn(foot).words().get(1))
        .isEqualTo("The foot edge is straight: folding alone makes it.");
    assertThat(Drawn.of(StrainGraph.of("g", "P", foot)).withClass("d-peak")).isEmpty();
  }

  @Test
  void the_chord_that_closes_a_single_flange_is_not_drawn_as_a_line_to_cut() {
    Drawn drawn = drawn(OUTER);
    assertThat(drawn.withClass("d-outline").get(0).getAttribute("d")).doesNotContain("Z");
    assertThat(drawn.withClass("d-joint")).hasSize(1);
    assertThat(drawn(OUTER, INNER).withClass("d-outline").get(0).getAttribute("d")).endsWith("Z");
  }

  private static final List<Hole> HOLES =
      List.of(
          new Hole("T1", HoleKind.TOOLING, 0, 260, 6),
          new Hole("L <b>1</b>", HoleKind.LIGHTENING, 180, 180, 40));

  /** The ring of a half circle, with holes, an allowance and a way cut through the outer edge. */
  private static Drawn cutRing(double allowanceMm) {
    Contour outer = OUTER.contour();
    FlangeFigures figures =
        FlangeFigures.of(
            outer, SHEET, METAL, EdgeCondition.POLISHED, List.of(new Cutout(400, 460, null)));
    FormedEdge cut = new FormedEdge("outer", outer, figures, SHEET.thicknessMm(), null);
    return Drawn.of(
        SegmentDrawing.of(
            "part",
            "P",
            List.of(cut, INNER),
            PartDevelopment.of(
                List.of(outer, INNER.contour()),
                List.of(figures, INNER.figures()),
                HOLES,
                allowanceMm)));
  }

  @Test
  void holes_are_round_at_true_size_with_a_centre_mark_and_their_label() {
    Drawn drawn = cutRing(0);
    List<Element> holes = drawn.withClass("d-hole");
    double perMm = Box.around(Drawn.spots(drawn.withClass("d-contour").get(0))).width() / (2 * 300);
    assertThat(holes).hasSize(2);
    assertThat(Drawn.number(holes.get(0), "r")).isCloseTo(3 * perMm, within(0.02));
    assertThat(Drawn.number(holes.get(1), "r")).isCloseTo(20 * perMm, within(0.02));
    assertThat(drawn.withClass("d-centre")).hasSize(2);
    assertThat(drawn.words()).contains("T1", "L <b>1</b>");
    assertThat(drawn.words().get(1)).endsWith("2 holes in the web.");
  }

  @Test
  void teeth_stand_only_on_the_metal_that_a_cutout_leaves_and_the_bend_line_is_broken() {
    Drawn drawn = cutRing(0);
    // 60 mm of 300 mm radius are 11.5°: of the stations every 3° three lie well within the way.
    int gone = OUTER.stations().size() + INNER.stations().size() - teeth(drawn).size();
    assertThat(gone).isBetween(1, 3);
    assertThat(drawn.withClass("d-bend")).hasSize(3);
  }

  @Test
  void an_allowance_is_drawn_outside_the_outline_and_the_rectangle_around_both() {
    assertThat(cutRing(0).withClass("d-trimmed")).isEmpty();
    Drawn drawn = cutRing(6);
    Box cut = Box.around(Drawn.spots(drawn.withClass("d-outline").get(0)));
    Box trimmed = Box.around(Drawn.spots(drawn.withClass("d-trimmed").get(0)));
    double perMm = Box.around(Drawn.spots(drawn.withClass("d-contour").get(0))).width() / (2 * 300);
    assertThat(trimmed.minY() - cut.minY()).isCloseTo(6 * perMm, within(0.1));
    assertThat(cut.maxY() - trimmed.maxY()).isCloseTo(6 * perMm, within(0.1));
    Box rectangle = Box.around(Drawn.spots(drawn.withClass("d-rectangle").get(0)));
    assertThat(rectangle.minX()).isCloseTo(cut.minX(), within(0.1));
    assertThat(rectangle.maxY()).isCloseTo(cut.maxY(), within(0.1));
    assertThat(drawn.words()).anyMatch(words -> words.startsWith("Smallest rectangle "));
  }

  @Test
  void the_graph_of_strain_is_broken_where_the_edge_is_cut_out() {
    FlangeFigures figures =
        FlangeFigures.of(
            OUTER.contour(),
            SHEET,
            METAL,
            EdgeCondition.POLISHED,
            List.of(new Cutout(400, 460, null)));
    FormedEdge cut = new FormedEdge("outer", OUTER.contour(), figures, SHEET.thicknessMm(), null);
    List<Element> curves = Drawn.of(StrainGraph.of("g", "P", cut)).withClass("d-curve");
    assertThat(curves).hasSize(2);
    List<Spot> before = Drawn.spots(curves.get(0));
    List<Spot> after = Drawn.spots(curves.get(1));
    double gap = after.get(0).x() - before.get(before.size() - 1).x();
    double whole = after.get(after.size() - 1).x() - before.get(0).x();
    assertThat(gap / whole).isCloseTo(60 / OUTER.contour().lengthMm(), within(0.0002));
    assertThat(Drawn.of(StrainGraph.of("g", "P", OUTER)).withClass("d-curve")).hasSize(1);
  }

  @Test
  void a_part_number_and_a_flange_name_stay_text() {
    FormedEdge hostile =
        edge("<img src=x onerror=alert(1)>", ellipse(300, 300, 0, 90), EdgeCondition.POLISHED);
    String number = "<script>alert(1)</script>";
    for (String svg :
        List.of(
            svg(number, hostile),
            StrainGraph.of("g", number, hostile),
            TrimGraph.of("t", number, hostile.name(), trimmed(hostile.contour(), 12)))) {
      assertThat(svg).doesNotContain("<script").doesNotContain("<img");
      assertThat(Drawn.of(svg).words().get(0)).contains(number);
    }
  }

  @Test
  void the_graph_runs_along_the_mould_line_and_shrink_lies_below_zero() {
    FormedEdge edge = edge("outer", wave(), EdgeCondition.POLISHED);
    Drawn drawn = Drawn.of(StrainGraph.of("g", "TW-F12-S1", edge));
    List<Spot> curve = Drawn.spots(drawn.withClass("d-curve").get(0));
    assertThat(curve).hasSize(edge.stations().size());
    double zero = Drawn.spots(drawn.withClass("d-tooth").get(0)).get(0).y();
    double perMm = (curve.get(curve.size() - 1).x() - curve.get(0).x()) / edge.contour().lengthMm();
    for (int i = 0; i < curve.size(); i++) {
      StationFigures station = edge.stations().get(i);
      assertThat(curve.get(i).x() - curve.get(0).x())
          .isCloseTo(perMm * station.arcMm(), within(0.02));
      assertThat(Math.signum(Math.rint(zero - curve.get(i).y())))
          .isIn(0.0, Math.signum(station.edgeStrain()));
    }
    assertThat(drawn.words())
        .contains("Edge strain, %", "Along the mould line, mm", edge.peakLabel());
  }

  private static TrimCurve trimmed(Contour contour, double finishedWidthMm) {
    return TrimCurve.of(contour, SHEET, finishedWidthMm);
  }

  @Test
  void the_edge_needs_more_the_wider_it_is_carried_and_both_widths_are_marked() {
    for (FormedEdge edge : List.of(OUTER, INNER)) {
      TrimCurve curve = trimmed(edge.contour(), 12);
      Drawn drawn = Drawn.of(TrimGraph.of("t", "TW-F07-S3", edge.name(), curve));
      List<Spot> line = Drawn.spots(drawn.withClass("d-curve").get(0));
      assertThat(line).hasSameSizeAs(curve.points());
      for (int i = 1; i < line.size(); i++) {
        assertThat(line.get(i).x()).isGreaterThan(line.get(i - 1).x());
        assertThat(line.get(i).y()).as("higher on the paper").isLessThan(line.get(i - 1).y());
      }
      assertThat(drawn.withClass("d-peak")).hasSize(2);
      assertThat(drawn.words())
          .anyMatch(words -> words.startsWith("finished, 12.0 mm: "))
          .contains(
              "working, 16.0 mm: " + Numbers.figure(100 * Math.abs(edge.peak()), 2) + " %",
              "Largest edge strain, %");
    }
  }

  /** Heights over the axis are in the proportion of the strains that two separate sums give. */
  @Test
  void the_marks_of_the_trim_graph_stand_at_the_strains_of_their_widths() {
    Contour working = ellipse(300, 300, 0, 180);
    Drawn drawn = Drawn.of(TrimGraph.of("t", "P", "outer", trimmed(working, 12)));
    List<Spot> line = Drawn.spots(drawn.withClass("d-curve").get(0));
    double zero =
        drawn.withClass("d-axis").stream()
            .map(Drawn::spots)
            .filter(axis -> axis.get(0).y() == axis.get(1).y())
            .findFirst()
            .orElseThrow()
            .get(0)
            .y();
    double proportion = (zero - line.get(0).y()) / (zero - line.get(line.size() - 1).y());
    Contour narrow =
        Contour.of(
            working.stations().stream()
                .map(s -> new Station(s.number(), s.xMm(), s.yMm(), s.bendAngleDeg(), 12))
                .toList());
    double finished = edge("outer", narrow, EdgeCondition.POLISHED).peak();
    // Coordinates have two decimals over a height of some 190: within 0.0002.
    assertThat(proportion).isCloseTo(finished / OUTER.peak(), within(0.0002));
  }

  @Test
  void an_edge_that_is_not_trimmed_or_has_nothing_to_do_can_still_be_drawn() {
    Contour straight =
        Contour.of(List.of(new Station(1, 0, 0, 90, 16), new Station(2, 300, 0, 90, 16)));
    for (double finished : new double[] {12, 16}) {
      Drawn drawn = Drawn.of(TrimGraph.of("t", "P", "foot", trimmed(straight, finished)));
      assertThat(drawn.withClass("d-curve")).hasSize(1);
    }
  }

  @Test
  void every_peak_is_lettered_on_the_paper() {
    for (int turn = 0; turn < 360; turn += 45) {
      FormedEdge edge = edge("outer", ellipse(300, 200, turn, turn + 90), EdgeCondition.POLISHED);
      Drawn drawn = drawn(edge);
      String[] view = drawn.root().getAttribute("viewBox").split(" ");
      for (Element text : drawn.named("text")) {
        double room = 15.0 * text.getTextContent().length();
        double x = Drawn.number(text, "x");
        String anchor = text.getAttribute("text-anchor");
        double from = anchor.equals("start") ? x : anchor.equals("end") ? x - room : x - room / 2;
        assertThat(from).as(text.getTextContent() + " at turn " + turn).isGreaterThan(-20);
        assertThat(from + room).isLessThan(Double.parseDouble(view[2]) + 20);
        assertThat(Drawn.number(text, "y")).isBetween(12.0, Double.parseDouble(view[3]));
      }
    }
  }
}
