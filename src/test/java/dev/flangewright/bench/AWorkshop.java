package dev.flangewright.bench;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;

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
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.springframework.context.ApplicationContext;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A build of its own in the test's database, with parts to begin pieces of. */
public final class AWorkshop {

  private final ApplicationContext context;
  private final Build build;
  private final Frame frame;

  private AWorkshop(ApplicationContext context, Build build, Frame frame) {
    this.context = context;
    this.build = build;
    this.frame = frame;
  }

  public static AWorkshop in(ApplicationContext context) {
    KeepAccounts accounts = context.getBean(KeepAccounts.class);
    if (accounts.nobodyYet()) {
      accounts.first("lead", "four plain words here");
    }
    Build build =
        as(
            Role.LEAD,
            () -> context.getBean(MakeBuild.class).named("Hull " + UUID.randomUUID(), ""));
    Frame frame = context.getBean(Frames.class).save(new Frame(build, "F7", new Written("2100")));
    return new AWorkshop(context, build, frame);
  }

  public long buildId() {
    return build.id();
  }

  /** A part with one shrink flange round an arc of 500 mm radius, figured. */
  public long part(String partNumber) {
    return part(partNumber, "S3", Hand.LEFT);
  }

  /** The same, of this segment and hand. */
  public long part(String partNumber, String segment, Hand hand) {
    Part part =
        new Part(
            frame,
            partNumber,
            new PartDrawing(
                segment, hand, "TW-0710", "C", "2024", "O", "1.2", new Written("3"), "B7"));
    part.addFlange(
            "outer", new FlangeDrawing(FlangeKind.SHRINK, new Written("20"), new Written("24")), 1)
        .follows(arc(), 1);
    context.getBean(FigurePart.class).sumUp(part);
    return context.getBean(Parts.class).save(part).id();
  }

  private static WrittenStations arc() {
    return WrittenStations.of(IntStream.rangeClosed(1, 9).mapToObj(AWorkshop::onTheArc).toList());
  }

  private static WrittenStation onTheArc(int number) {
    double angle = Math.toRadians(10 * number);
    return new WrittenStation(
        number, mm(500 * Math.cos(angle)), mm(500 * Math.sin(angle)), new Written("90"), null);
  }

  private static Written mm(double value) {
    return new Written(String.format(Locale.ROOT, "%.3f", value));
  }

  public Piece begin(long partId) {
    return as(Role.FITTER, () -> context.getBean(BeginPiece.class).of(partId));
  }

  /** Finishes every stage of a piece before the given one. */
  public void bringTo(Piece piece, String code) {
    LogStage log = context.getBean(LogStage.class);
    for (PieceStage stage : piece.stages()) {
      if (stage.code().equals(code)) {
        return;
      }
      long id = piece.id();
      as(Role.FITTER, () -> log.start(id, stage.code(), null, ""));
      if (stage.isHoldPoint()) {
        as(Role.INSPECTOR, () -> log.check(id, stage.code(), null, ""));
      }
      as(Role.FITTER, () -> log.finish(id, stage.code(), 1.0, null, ""));
    }
  }

  public static <T> T as(Role role, Supplier<T> work) {
    Object[] result = new Object[1];
    SignedIn.as(role.word(), role, () -> result[0] = work.get());
    @SuppressWarnings("unchecked") // it is what the supplier gave
    T typed = (T) result[0];
    return typed;
  }

  /** A request's account: named after its role, with all that the role usually has. */
  public static RequestPostProcessor signedIn(Role role) {
    return user(role.word()).authorities(AuthorityUtils.createAuthorityList(role.authorities()));
  }
}
