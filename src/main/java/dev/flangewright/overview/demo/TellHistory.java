package dev.flangewright.overview.demo;

import dev.flangewright.bench.BeginPiece;
import dev.flangewright.bench.LogStage;
import dev.flangewright.bench.WorkDone;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.ShopClock;
import dev.flangewright.people.SignedIn;
import dev.flangewright.quality.Finding;
import dev.flangewright.quality.Outcome;
import dev.flangewright.quality.RecordInspection;
import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/**
 * Acts the demo's history out, each entry by its person and at its time. Needs an open transaction
 * and leaves nothing in its persistence context.
 */
@Component
class TellHistory {

  private final Parts parts;
  private final BeginPiece begin;
  private final LogStage log;
  private final RecordInspection inspections;
  private final DemoStock stock;
  private final ShopClock clock;
  private final EntityManager entities;

  TellHistory(
      Parts parts,
      BeginPiece begin,
      LogStage log,
      RecordInspection inspections,
      DemoStock stock,
      ShopClock clock,
      EntityManager entities) {
    this.parts = parts;
    this.begin = begin;
    this.log = log;
    this.inspections = inspections;
    this.stock = stock;
    this.clock = clock;
    this.entities = entities;
  }

  void of(long buildId, List<Act> acts) {
    Map<String, Long> pieces = new HashMap<>();
    for (Act act : acts) {
      clock.at(
          act.at(), () -> SignedIn.as(act.by().word(), act.by(), () -> tell(buildId, act, pieces)));
    }
  }

  /**
   * Stored while its person acts, or the journal would not know of them; and forgotten, or each of
   * some hundred entries would look through all the entities of those before it.
   */
  private void tell(long buildId, Act act, Map<String, Long> pieces) {
    perform(buildId, act, pieces);
    entities.flush();
    entities.clear();
  }

  private void perform(long buildId, Act act, Map<String, Long> pieces) {
    if (act.kind() == Act.Kind.BEGIN) {
      pieces.put(act.partNumber(), begin.of(partId(buildId, act.partNumber())).id());
      return;
    }
    long piece = pieces.getOrDefault(act.partNumber(), 0L);
    switch (act.kind()) {
      case START -> log.start(piece, act.stage(), null, act.note());
      case CHECK -> log.check(piece, act.stage(), null, act.note());
      case FINISH -> log.finish(piece, act.stage(), null, done(piece, act));
      case UNDO -> log.undo(piece, null, act.note());
      case ACCEPT -> inspections.of(piece, finding(Outcome.ACCEPT, act));
      case CONCEDE -> inspections.of(piece, finding(Outcome.CONCESSION, act));
      case REWORK -> inspections.of(piece, finding(Outcome.REWORK, act));
      case SCRAP -> inspections.of(piece, finding(Outcome.SCRAP, act));
      case BEGIN -> throw new IllegalStateException("begun above");
    }
  }

  private WorkDone done(long piece, Act act) {
    return WorkDone.in(act.hours(), act.note()).cutFrom(stock.markFor(piece, act.stage()));
  }

  private long partId(long buildId, String partNumber) {
    return parts.findByBuildIdAndPartNumber(buildId, partNumber).orElseThrow().id();
  }

  private static Finding finding(Outcome outcome, Act act) {
    return new Finding(outcome, act.cause(), act.stage(), act.note(), null);
  }
}
