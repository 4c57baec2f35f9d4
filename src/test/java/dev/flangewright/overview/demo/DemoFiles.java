package dev.flangewright.overview.demo;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Writes the demo's two files from the hull. Run {@code main} in the project's folder after a
 * change to the hull; a test compares the committed files with what comes out here.
 */
final class DemoFiles {

  static final Path FOLDER = Path.of("src/main/resources/demo");

  private static final double APART_MM = 40;
  private static final int FINE = 720;
  private static final int FLOOR_STATIONS = 7;
  private static final int RUN_OUT_STATIONS = 4;
  private static final String REGISTER_HEAD =
      "part_number,frame,frame_position_mm,segment,hand,drawing,drawing_issue,alloy,temper,"
          + "thickness_mm,inside_bend_radius_mm,block_set,flange,flange_kind,finished_width_mm,"
          + "working_width_mm\n";
  private static final String CONTOURS_HEAD =
      "part_number,flange,station,x_mm,y_mm,bend_angle_deg,width_mm\n";

  private DemoFiles() {}

  public static void main(String[] args) throws IOException {
    Files.createDirectories(FOLDER);
    Files.writeString(FOLDER.resolve("register.csv"), register());
    Files.writeString(FOLDER.resolve("contours.csv"), contours());
  }

  static String register() {
    return TidewingHull.segments().stream()
        .map(
            segment ->
                row(segment, "outer", segment.outerKind())
                    + row(segment, "inner", segment.innerKind()))
        .collect(Collectors.joining("", REGISTER_HEAD, ""));
  }

  static String contours() {
    return TidewingHull.segments().stream()
        .map(segment -> outer(segment) + inner(segment))
        .collect(Collectors.joining("", CONTOURS_HEAD, ""));
  }

  private static String row(Segment segment, String flange, FlangeKind kind) {
    var frame = segment.frame();
    var metal = segment.metal();
    var widths = segment.widths();
    return String.format(
        Locale.ROOT,
        "%s,F%d,%.0f,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%d,%d\n",
        segment.partNumber(),
        frame.number(),
        frame.positionMm(),
        segment.name(),
        segment.hand().word(),
        segment.drawing(),
        frame.number() % 3 == 1 ? "B" : "A",
        metal.alloy(),
        metal.temper(),
        metal.thickness(),
        metal.insideRadiusMm(),
        segment.blockSet(),
        flange,
        kind.label(),
        widths.finishedMm(),
        widths.workingMm());
  }

  private static String outer(Segment segment) {
    List<Double> angles = angles(segment);
    int last = angles.size();
    return IntStream.range(0, last)
        .mapToObj(
            i -> {
              double u = angles.get(i);
              String width = segment.runOut() ? runOut(segment, last - 1 - i) : "";
              return station(
                  segment,
                  "outer",
                  i + 1,
                  segment.frame().skin(u),
                  bend(segment.frame(), u),
                  width);
            })
        .collect(Collectors.joining());
  }

  /** The other way round, so that the web is on the left again. */
  private static String inner(Segment segment) {
    List<Point> points = new ArrayList<>(segment.floor() ? floor(segment) : following(segment));
    Collections.reverse(points);
    return IntStream.range(0, points.size())
        .mapToObj(i -> station(segment, "inner", i + 1, points.get(i), 90, ""))
        .collect(Collectors.joining());
  }

  private static List<Point> following(Segment segment) {
    return angles(segment).stream()
        .map(u -> segment.frame().inside(u, segment.widths().webMm()))
        .toList();
  }

  private static List<Point> floor(Segment segment) {
    Point from = segment.frame().inside(segment.fromU(), segment.widths().webMm());
    Point to = segment.frame().inside(segment.toU(), segment.widths().webMm());
    return IntStream.range(0, FLOOR_STATIONS)
        .mapToObj(
            i -> {
              double share = i / (FLOOR_STATIONS - 1.0);
              return new Point(
                  from.xMm() + share * (to.xMm() - from.xMm()),
                  from.yMm() + share * (to.yMm() - from.yMm()));
            })
        .toList();
  }

  /** Angles that part the mould line into equal lengths of about 40 mm. */
  private static List<Double> angles(Segment segment) {
    double[] arc = new double[FINE + 1];
    for (int i = 1; i <= FINE; i++) {
      Point before = segment.frame().skin(angle(segment, i - 1));
      Point here = segment.frame().skin(angle(segment, i));
      arc[i] = arc[i - 1] + StrictMath.hypot(here.xMm() - before.xMm(), here.yMm() - before.yMm());
    }
    int pieces = (int) Math.round(arc[FINE] / APART_MM);
    return IntStream.rangeClosed(0, pieces)
        .mapToObj(i -> angle(segment, positionOf(arc, arc[FINE] * i / pieces)))
        .toList();
  }

  private static double angle(Segment segment, double position) {
    return segment.fromU() + (segment.toU() - segment.fromU()) * (position / FINE);
  }

  private static double positionOf(double[] arc, double length) {
    int i = 1;
    while (i < FINE && arc[i] < length) {
      i++;
    }
    double share = (length - arc[i - 1]) / (arc[i] - arc[i - 1]);
    return i - 1 + Math.min(1, share);
  }

  /** The flange is turned aft: where the hull widens towards the stern the bevel is open. */
  private static double bend(LoftedFrame frame, double u) {
    List<LoftedFrame> all = TidewingHull.FRAMES;
    int i = all.indexOf(frame);
    LoftedFrame fore = all.get(Math.max(0, i - 1));
    LoftedFrame aft = all.get(Math.min(all.size() - 1, i + 1));
    return 90 - StrictMath.toDegrees(StrictMath.atan(LoftedFrame.taper(fore, aft, frame, u)));
  }

  private static String runOut(Segment segment, int fromTheEnd) {
    int less = Math.max(0, RUN_OUT_STATIONS - fromTheEnd);
    return Integer.toString(segment.widths().workingMm() - less);
  }

  private static String station(
      Segment segment, String flange, int number, Point at, double bendDegrees, String width) {
    return String.format(
        Locale.ROOT,
        "%s,%s,%d,%.2f,%.2f,%.1f,%s\n",
        segment.partNumber(),
        flange,
        number,
        at.xMm(),
        at.yMm(),
        bendDegrees,
        width);
  }
}
