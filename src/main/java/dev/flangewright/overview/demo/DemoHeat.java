package dev.flangewright.overview.demo;

import dev.flangewright.bench.Answer;
import dev.flangewright.bench.BeginPiece;
import dev.flangewright.bench.ChooseRoute;
import dev.flangewright.bench.LogFreezer;
import dev.flangewright.bench.LogStage;
import dev.flangewright.bench.PartNature;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.Quenching;
import dev.flangewright.bench.RouteOf;
import dev.flangewright.bench.StageKind;
import dev.flangewright.bench.WorkDone;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Role;
import dev.flangewright.people.ShopClock;
import dev.flangewright.people.SignedIn;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.springframework.stereotype.Component;

/**
 * Two invented pieces after the quench: one on the bench, so that a fresh demo shows a clock that
 * runs, and one in the freezer.
 */
@Component
class DemoHeat {

  static final String ON_THE_BENCH = "TW-F03-S1";
  static final String IN_THE_FREEZER = "TW-F03-S2R";

  private static final Duration JUST_QUENCHED = Duration.ofMinutes(4);
  private static final Duration YESTERDAY = Duration.ofHours(20);
  private static final Duration BEFORE_THE_QUENCH = Duration.ofHours(30);
  private static final Duration A_STAGE = Duration.ofMinutes(45);
  private static final double FREEZER_C = -20;

  private final Parts parts;
  private final RouteOf routes;
  private final ChooseRoute choose;
  private final BeginPiece begin;
  private final LogStage log;
  private final LogFreezer freezer;
  private final DemoStock stock;
  private final ShopClock clock;

  DemoHeat(
      Parts parts,
      RouteOf routes,
      ChooseRoute choose,
      BeginPiece begin,
      LogStage log,
      LogFreezer freezer,
      DemoStock stock,
      ShopClock clock) {
    this.parts = parts;
    this.routes = routes;
    this.choose = choose;
    this.begin = begin;
    this.log = log;
    this.freezer = freezer;
    this.stock = stock;
    this.clock = clock;
  }

  /** Whoever is signed in chooses the route; the fitter does the work. */
  void treat(long buildId, Instant now) {
    String route = routes.usual(buildId, PartNature.HEAT_TREATED).orElseThrow().name();
    choose.forParts(buildId, List.of(ON_THE_BENCH, IN_THE_FREEZER), route);
    Piece frozen = quenched(buildId, IN_THE_FREEZER, now.minus(YESTERDAY));
    as(
        Role.FITTER,
        now.minus(YESTERDAY).plus(Duration.ofMinutes(6)),
        () -> freezer.into(frozen.id(), FREEZER_C, ""));
    quenched(buildId, ON_THE_BENCH, now.minus(JUST_QUENCHED));
  }

  private Piece quenched(long buildId, String partNumber, Instant quenchedAt) {
    long part = parts.findByBuildIdAndPartNumber(buildId, partNumber).orElseThrow().id();
    Piece[] begun = new Piece[1];
    Instant at = quenchedAt.minus(BEFORE_THE_QUENCH);
    as(Role.FITTER, at, () -> begun[0] = begin.of(part));
    for (PieceStage stage : begun[0].stages()) {
      if (stage.kind() == StageKind.HEAT_TREAT) {
        treat(begun[0].id(), stage, quenchedAt);
        return begun[0];
      }
      at = work(begun[0].id(), stage, at);
    }
    throw new IllegalStateException(partNumber + " is not heat treated on its route");
  }

  /** When the stage was finished. */
  private Instant work(long piece, PieceStage stage, Instant at) {
    Instant end = at.plus(A_STAGE);
    as(Role.FITTER, at, () -> log.start(piece, stage.code(), null, ""));
    if (stage.isHoldPoint()) {
      as(Role.INSPECTOR, end, () -> log.check(piece, stage.code(), null, ""));
    }
    as(
        Role.FITTER,
        end,
        () ->
            log.finish(
                piece,
                stage.code(),
                null,
                WorkDone.in(0.75, "").cutFrom(stock.markFor(piece, stage.code()))));
    return end;
  }

  private void treat(long piece, PieceStage stage, Instant quenchedAt) {
    as(Role.FITTER, quenchedAt.minus(A_STAGE), () -> log.start(piece, stage.code(), null, ""));
    as(
        Role.FITTER,
        quenchedAt.plus(Duration.ofMinutes(1)),
        () -> {
          stage
              .checks()
              .forEach(
                  check ->
                      log.answer(piece, stage.code(), check.code(), Answer.of(true), null, ""));
          log.finish(
              piece,
              stage.code(),
              null,
              WorkDone.in(0.75, "").quenched(new Quenching(quenchedAt, false)));
        });
  }

  private void as(Role who, Instant then, Runnable work) {
    clock.at(then, () -> SignedIn.as(who.word(), who, work));
  }
}
