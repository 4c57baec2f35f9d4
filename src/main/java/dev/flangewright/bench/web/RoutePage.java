package dev.flangewright.bench.web;

import dev.flangewright.bench.CheckCard;
import dev.flangewright.bench.Route;
import dev.flangewright.bench.RouteStage;
import dev.flangewright.bench.StageCard;
import dev.flangewright.bench.StageCheck;
import dev.flangewright.people.Clearance;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One version of a route, for its page.
 *
 * @param basedOn the version it was made from, in words; empty if it was made from none
 * @param versions all versions of this route, the newest first
 */
record RoutePage(
    long id,
    long buildId,
    String name,
    String label,
    boolean draft,
    int changes,
    String basedOn,
    List<OfStage> stages,
    List<OfVersion> versions) {

  /** A stage, what is said of it, and the same as the editor takes it. */
  record OfStage(
      long id,
      int place,
      String name,
      String code,
      boolean byInspection,
      List<String> facts,
      List<OfCheck> checks,
      StageForm form) {

    static OfStage of(RouteStage stage) {
      return new OfStage(
          stage.id(),
          stage.seq(),
          stage.name(),
          stage.code(),
          stage.kind().byInspection(),
          facts(stage),
          stage.checks().stream().map(OfCheck::of).toList(),
          StageForm.of(stage));
    }

    private static List<String> facts(RouteStage stage) {
      StageCard card = stage.card();
      List<String> facts = new ArrayList<>();
      facts.add(card.kind().word());
      if (card.holdCheck() != null) {
        facts.add("hold point: " + card.holdCheck());
      }
      Clearance needed = card.clearance();
      if (needed != null) {
        facts.add("for those cleared to " + needed.words());
      }
      card.blockNeed().ifPresent(need -> facts.add("done on the " + need.inWords()));
      if (card.alongside()) {
        facts.add("may be done alongside its neighbours that say the same");
      }
      if (card.expectedMinutes() != null) {
        facts.add("expected to take " + card.expectedMinutes() + " min");
      }
      if (stage.flangesNeeded() > 0) {
        String flanges =
            stage.flangesNeeded() == 1 ? "a flange" : stage.flangesNeeded() + " flanges";
        facts.add("only for parts with " + flanges + " or more");
      }
      return facts;
    }
  }

  /** A check, what is said of it, and the same as the editor takes it. */
  record OfCheck(long id, String question, String wanted, CheckForm form) {

    static OfCheck of(StageCheck check) {
      CheckCard card = check.card();
      return new OfCheck(check.id(), card.question(), card.wanted(), CheckForm.of(card));
    }
  }

  /** Another version, to be looked at. */
  record OfVersion(long id, String words, boolean shown) {}

  static RoutePage of(Route route, List<Route> ofBuild) {
    return new RoutePage(
        route.id(),
        route.buildId(),
        route.name(),
        route.label(),
        route.isDraft(),
        route.changes(),
        ofBuild.stream()
            .filter(other -> Objects.equals(other.id(), route.basedOnId()))
            .map(Route::label)
            .findFirst()
            .orElse(""),
        route.stages().stream().map(OfStage::of).toList(),
        ofBuild.stream()
            .filter(other -> other.name().equals(route.name()))
            .map(other -> version(other, route))
            .toList());
  }

  private static OfVersion version(Route other, Route shown) {
    return new OfVersion(
        other.id(),
        "Version %d, %s".formatted(other.number(), other.state().word()),
        other.id().equals(shown.id()));
  }
}
