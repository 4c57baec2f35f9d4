package dev.flangewright.parts;

import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.support.TransactionTemplate;

/** Puts builds and parts into the register of a test, as a lead would. */
public class SampleRegister {

  private static final String NAME = "outer";

  private final MakeBuild make;
  private final KeepFrames frames;
  private final DrawPart drawPart;
  private final DrawFlange drawFlange;
  private final Frames allFrames;
  private final Parts allParts;
  private final CheckDrawing check;
  private final FigurePart figure;
  private final TransactionTemplate transaction;

  /**
   * @param application of the test, whose database is filled
   */
  public SampleRegister(ApplicationContext application) {
    this.make = application.getBean(MakeBuild.class);
    this.frames = application.getBean(KeepFrames.class);
    this.drawPart = application.getBean(DrawPart.class);
    this.drawFlange = application.getBean(DrawFlange.class);
    this.allFrames = application.getBean(Frames.class);
    this.allParts = application.getBean(Parts.class);
    this.check = application.getBean(CheckDrawing.class);
    this.figure = application.getBean(FigurePart.class);
    this.transaction = application.getBean(TransactionTemplate.class);
  }

  /** A build with one frame, F1 at 1000 mm. */
  public long build(String name) {
    return asLead(
        () -> {
          long id = make.named(name, "").id();
          frames.add(id, new FrameEntry("F1", "1000", ""));
          return id;
        });
  }

  /** A part of 2024-O, 1.2 mm, with an outer shrink flange of 500 mm radius and no inner one. */
  public long part(long buildId, String number) {
    return asLead(
        () -> {
          long id = drawPart.add(buildId, entry(number)).id();
          drawFlange.add(id, flange(NAME, "shrink", Arc.shrink(500, 11)));
          return id;
        });
  }

  /** As many parts, with a shrink and a stretch flange each, numbered P-001 onwards. */
  public void parts(long buildId, int count) {
    transaction.executeWithoutResult(
        status -> {
          Frame frame = allFrames.findByBuildIdAndCode(buildId, "F1").orElseThrow();
          allParts.saveAll(
              IntStream.rangeClosed(1, count)
                  .mapToObj(i -> drawn(frame, String.format(Locale.ROOT, "P-%03d", i)))
                  .toList());
        });
  }

  private Part drawn(Frame frame, String number) {
    Faults faults = new Faults();
    Part part = new Part(frame, number, check.part(entry(number), faults));
    add(part, flange(NAME, "shrink", Arc.shrink(500, 11)), faults);
    add(part, flange("inner", "stretch", Arc.stretch(430, 11)), faults);
    faults.refuseIfAny();
    figure.sumUp(part);
    return part;
  }

  private void add(Part part, FlangeEntry entry, Faults faults) {
    int order = part.flanges().size();
    Flange flange = part.addFlange(entry.flange(), check.flange(entry, faults), order);
    flange.follows(ContourLines.read(entry.stations(), faults), order);
  }

  public static PartEntry entry(String number) {
    return new PartEntry(number, "F1", "1", "left", "D-1", "A", "2024", "O", "1.2", "3", "BS-1");
  }

  public static FlangeEntry flange(String name, String kind, String stations) {
    return new FlangeEntry(name, kind, "18", "22", "", "POLISHED", stations);
  }

  /** Lines of a contour that shrinks, 500 mm in radius. */
  public static List<String> shrinkingLines() {
    return Arc.shrink(500, 11).lines().toList();
  }

  private static <T> T asLead(Supplier<T> work) {
    AtomicReference<T> made = new AtomicReference<>();
    SignedIn.as("lead", Role.LEAD, () -> made.set(work.get()));
    return made.get();
  }
}
