package dev.flangewright.bench.web;

import dev.flangewright.bench.CheckCard;
import dev.flangewright.bench.CheckKind;
import dev.flangewright.bench.Route;
import dev.flangewright.bench.RouteStage;
import dev.flangewright.bench.RouteState;
import dev.flangewright.bench.StageCheck;
import dev.flangewright.bench.StageKind;
import dev.flangewright.people.Clearance;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One version of a route with its stages and checks. */
record RouteAnswer(
    long id,
    long buildId,
    String name,
    @Schema(description = "Counted from 1 for each name.") int number,
    @Schema(description = "Pieces begin on released versions only.") RouteState state,
    @Schema(description = "The version it was made from; null for a build's first ones.")
        @Nullable Long basedOnId,
    List<OfStage> stages) {

  /** A stage of a route. */
  @Schema(name = "StageOfRoute")
  record OfStage(
      String code,
      String name,
      StageKind kind,
      @Schema(description = "What must be checked to pass; null when it is no hold point.")
          @Nullable String holdCheck,
      @Nullable Clearance clearance,
      @Nullable Integer expectedMinutes,
      boolean alongside,
      @Schema(description = "The kind of block that must be ready, if recorded; null for none.")
          @Nullable String needsBlock,
      @Schema(description = "Which stage of form blocks; null for the first or only one.")
          @Nullable Integer blockStage,
      @Schema(description = "Left out for parts with fewer flanges.") int flangesNeeded,
      List<OfCheck> checks) {

    static OfStage of(RouteStage stage) {
      return new OfStage(
          stage.code(),
          stage.name(),
          stage.kind(),
          stage.holdCheck(),
          stage.clearance(),
          stage.card().expectedMinutes(),
          stage.card().alongside(),
          stage.card().needsBlock(),
          stage.card().blockStage(),
          stage.flangesNeeded(),
          stage.checks().stream().map(OfCheck::of).toList());
    }
  }

  /** A check of a route. */
  @Schema(name = "CheckOfRoute")
  record OfCheck(
      String code,
      String question,
      CheckKind kind,
      String unit,
      @Nullable Double nominal,
      @Nullable Double from,
      @Nullable Double to) {

    static OfCheck of(StageCheck check) {
      CheckCard card = check.card();
      return new OfCheck(
          check.code(),
          card.question(),
          card.kind(),
          card.unit(),
          card.nominal(),
          card.least(),
          card.most());
    }
  }

  static RouteAnswer of(Route route) {
    return new RouteAnswer(
        route.id(),
        route.buildId(),
        route.name(),
        route.number(),
        route.state(),
        route.basedOnId(),
        route.stages().stream().map(OfStage::of).toList());
  }
}
