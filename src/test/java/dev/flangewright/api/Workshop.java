package dev.flangewright.api;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.parts.Build;
import dev.flangewright.parts.FigurePart;
import dev.flangewright.parts.FlangeDrawing;
import dev.flangewright.parts.Frame;
import dev.flangewright.parts.Frames;
import dev.flangewright.parts.Hand;
import dev.flangewright.parts.MakeBuild;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartDrawing;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.Written;
import dev.flangewright.parts.WrittenStation;
import dev.flangewright.parts.WrittenStations;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.transaction.annotation.Transactional;

/** Puts register entries where the API can read them; all data is invented. */
@TestComponent
class Workshop {

  /** A quarter of a circle in 46 stations of two degrees. */
  static final int STATIONS = 46;

  private static final AtomicInteger BUILDS = new AtomicInteger();

  private final MakeBuild make;
  private final Frames frames;
  private final Parts parts;
  private final FigurePart figure;

  Workshop(MakeBuild make, Frames frames, Parts parts, FigurePart figure) {
    this.make = make;
    this.frames = frames;
    this.parts = parts;
    this.figure = figure;
  }

  Build build() {
    AtomicReference<Build> made = new AtomicReference<>();
    String name = "Build " + BUILDS.incrementAndGet() + " of the API tests";
    SignedIn.as("lead", Role.LEAD, () -> made.set(make.named(name, "")));
    return made.get();
  }

  /** A part in a build of its own, with one shrink flange along a quarter of a circle; its id. */
  @Transactional
  public long partOnACircle(
      double thicknessMm, double insideBendRadiusMm, double radiusMm, double widthMm) {
    Frame frame = frames.save(new Frame(build(), "F7", new Written("3500")));
    return part(frame, "TW-F07-S1", thicknessMm, insideBendRadiusMm, radiusMm, widthMm).id();
  }

  /** A build of so many parts; its id. */
  @Transactional
  public long buildOf(int count) {
    Build build = build();
    Frame frame = frames.save(new Frame(build, "F7", new Written("3500")));
    IntStream.rangeClosed(1, count)
        .forEach(n -> part(frame, "TW-F07-S%03d".formatted(n), 1.2, 3, 500, 20));
    return build.id();
  }

  private Part part(
      Frame frame, String number, double thicknessMm, double bendMm, double radius, double width) {
    PartDrawing drawn =
        new PartDrawing(
            "S1",
            Hand.LEFT,
            "TW-100",
            "A",
            "2024",
            "T3",
            written(thicknessMm).text(),
            written(bendMm),
            "B1");
    Part part = new Part(frame, number, drawn);
    part.addFlange("outer", new FlangeDrawing(FlangeKind.SHRINK, written(width), written(width)), 1)
        .follows(quarterCircle(radius), 1);
    figure.sumUp(part);
    return parts.save(part);
  }

  /** Travelled anticlockwise, so that it turns left and the web lies inside: a shrink. */
  private static WrittenStations quarterCircle(double radiusMm) {
    return WrittenStations.of(
        IntStream.range(0, STATIONS)
            .mapToObj(i -> station(i + 1, radiusMm, Math.toRadians(2.0 * i)))
            .toList());
  }

  private static WrittenStation station(int number, double radiusMm, double angle) {
    return new WrittenStation(
        number,
        written(radiusMm * Math.cos(angle)),
        written(radiusMm * Math.sin(angle)),
        new Written("90"),
        null);
  }

  private static Written written(double value) {
    return new Written(String.format(Locale.ROOT, "%.6f", value));
  }
}
