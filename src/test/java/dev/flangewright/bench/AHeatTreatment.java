package dev.flangewright.bench;

import dev.flangewright.people.Role;
import dev.flangewright.people.ShopClock;
import dev.flangewright.people.SignedIn;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.springframework.context.ApplicationContext;

/** Pieces of a workshop in the test's database that are heat treated, and a clock to go by. */
public final class AHeatTreatment {

  public static final String TREAT = "heat-treat";
  public static final String SET = "set-to-template";
  public static final String CHART = "furnace-chart-kept-with-the-piece";

  private final ApplicationContext context;
  private final AWorkshop workshop;
  private final Instant begin =
      Instant.now().plus(Duration.ofHours(1)).truncatedTo(ChronoUnit.SECONDS);

  private AHeatTreatment(ApplicationContext context) {
    this.context = context;
    this.workshop = AWorkshop.in(context);
  }

  public static AHeatTreatment in(ApplicationContext context) {
    return new AHeatTreatment(context);
  }

  public long buildId() {
    return workshop.buildId();
  }

  /** A piece of 2024 whose heat treatment was started: what is left is to finish it. */
  public long piece(String partNumber) {
    long part = workshop.part(partNumber);
    SignedIn.as(
        "lead",
        Role.LEAD,
        () ->
            context
                .getBean(ChooseRoute.class)
                .forParts(workshop.buildId(), List.of(partNumber), "Heat treated"));
    Piece piece = workshop.begin(part);
    workshop.bringTo(piece, TREAT);
    LogStage log = context.getBean(LogStage.class);
    SignedIn.as(
        "fitter",
        Role.FITTER,
        () -> {
          log.start(piece.id(), TREAT, null, "");
          log.answer(piece.id(), TREAT, CHART, Answer.of(true), null, "");
        });
    return piece.id();
  }

  /** The same, finished and quenched at minute 0. */
  public long quenched(String partNumber) {
    long piece = piece(partNumber);
    at(0, Role.FITTER, () -> context.getBean(LogStage.class).finish(piece, TREAT, null, null, ""));
    return piece;
  }

  /** So many minutes after the quench. */
  public Instant minute(double minutes) {
    return begin.plusMillis(Math.round(minutes * 60_000));
  }

  public void at(double minutes, Role role, Runnable work) {
    context
        .getBean(ShopClock.class)
        .at(minute(minutes), () -> SignedIn.as(role.word(), role, work));
  }
}
