package dev.flangewright.overview.demo;

import dev.flangewright.overview.demo.Segment.Metal;
import dev.flangewright.overview.demo.Segment.Widths;
import dev.flangewright.parts.Hand;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The invented hull: 13 frames, 62 segments, 9 m from bow to stern post. F8 is the step frame,
 * whose keel segment has a reverse curve on either side of the keel.
 */
final class TidewingHull {

  /** Number, position, half breadth, crown, keel, rise and keel drop, all mm. */
  static final List<LoftedFrame> FRAMES =
      List.of(
          new LoftedFrame(2, 900, 450, 500, 540, 70, 0),
          new LoftedFrame(3, 1500, 540, 590, 650, 35, 0),
          new LoftedFrame(4, 2100, 610, 690, 740, 15, 0),
          new LoftedFrame(5, 2700, 655, 790, 790, 5, 0),
          new LoftedFrame(6, 3300, 680, 850, 820, 0, 0),
          new LoftedFrame(7, 3900, 690, 870, 830, 0, 0),
          new LoftedFrame(8, 4500, 685, 850, 820, 5, 14),
          new LoftedFrame(9, 5100, 665, 800, 780, 20, 0),
          new LoftedFrame(10, 5700, 635, 740, 715, 45, 0),
          new LoftedFrame(11, 6300, 595, 670, 635, 85, 0),
          new LoftedFrame(12, 6900, 545, 600, 550, 130, 0),
          new LoftedFrame(13, 7500, 485, 535, 470, 180, 0),
          new LoftedFrame(14, 8100, 420, 470, 395, 235, 0));

  private static final Metal BOW = new Metal("5052", "O", "22 SWG", "3.2");
  private static final Metal FORE = new Metal("2024", "O", "20 SWG", "4.0");
  private static final Metal MAIN = new Metal("2024", "O", "18 SWG", "5.0");
  private static final Metal STEP = new Metal("2024", "O", "1.6", "5.6");
  private static final Metal AFT = new Metal("6061", "T4", "0.036 in", "3.4");
  private static final Metal STERN = new Metal("6061", "T4", "0.7", "3.2");

  /** Sheets chosen against the forming figures, as somebody short of stock might. */
  private static final Map<String, Metal> EXCEPTIONS =
      Map.of(
          "TW-F03-S3L", new Metal("5052", "H32", "0.9", "3.2"),
          "TW-F06-S1", new Metal("2024", "O", "1.2", "2.5"));

  private TidewingHull() {}

  static List<Segment> segments() {
    return FRAMES.stream().flatMap(TidewingHull::segments).toList();
  }

  private static Stream<Segment> segments(LoftedFrame frame) {
    if (frame.number() == 2 || frame.number() >= 12) {
      return Stream.of(
          segment(frame, "S1", Hand.NONE, 55, -55),
          segment(frame, "S2", Hand.LEFT, -55, -125),
          segment(frame, "S2", Hand.RIGHT, 125, 55),
          segment(frame, "S3", Hand.NONE, -125, -235));
    }
    double keelJoint = frame.number() == 8 ? 145 : 180;
    Stream<Segment> pairs =
        Stream.of(
            segment(frame, "S1", Hand.NONE, 50, -50),
            segment(frame, "S2", Hand.LEFT, -50, -110),
            segment(frame, "S2", Hand.RIGHT, 110, 50),
            segment(frame, "S3", Hand.LEFT, -110, -keelJoint),
            segment(frame, "S3", Hand.RIGHT, keelJoint, 110));
    return frame.number() == 8
        ? Stream.concat(pairs, Stream.of(segment(frame, "S4", Hand.NONE, -145, -215)))
        : pairs;
  }

  private static Segment segment(
      LoftedFrame frame, String name, Hand hand, double fromU, double toU) {
    boolean floor = name.equals("S3") && hand == Hand.NONE;
    boolean runOut = name.equals("S3") && frame.number() % 4 == 1;
    Segment usual =
        new Segment(
            frame, name, hand, fromU, toU, metal(frame), widths(frame, floor), floor, runOut);
    Metal odd = EXCEPTIONS.get(usual.partNumber());
    return odd == null
        ? usual
        : new Segment(frame, name, hand, fromU, toU, odd, widths(frame, floor), floor, runOut);
  }

  private static Metal metal(LoftedFrame frame) {
    return switch (frame.number()) {
      case 2 -> BOW;
      case 3, 4, 5 -> FORE;
      case 8 -> STEP;
      case 6, 7, 9 -> MAIN;
      case 10, 11, 12 -> AFT;
      default -> STERN;
    };
  }

  private static Widths widths(LoftedFrame frame, boolean floor) {
    return switch (frame.number()) {
      case 2 -> new Widths(60, 16, 20);
      case 14 -> new Widths(60, 16, floor ? 24 : 20);
      case 3, 12, 13 -> new Widths(70, 16, 20);
      case 4, 10, 11 -> new Widths(80, 18, 21);
      case 8 -> new Widths(110, 18, 22);
      default -> new Widths(95, 18, 22);
    };
  }
}
