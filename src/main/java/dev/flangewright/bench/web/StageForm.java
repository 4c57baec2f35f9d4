package dev.flangewright.bench.web;

import dev.flangewright.bench.RouteStage;
import dev.flangewright.bench.StageCard;
import dev.flangewright.bench.StageKind;
import dev.flangewright.bench.StagePlan;
import dev.flangewright.people.Clearance;
import org.jspecify.annotations.Nullable;

/** A stage as typed in the route editor. A box that is not ticked is not sent at all. */
record StageForm(
    @Nullable String name,
    @Nullable StageKind kind,
    @Nullable String holdCheck,
    @Nullable Integer flangesNeeded,
    @Nullable Clearance clearance,
    @Nullable Integer expectedMinutes,
    @Nullable Boolean alongside,
    @Nullable String needsBlock,
    @Nullable Integer blockStage) {

  static final StageForm EMPTY = new StageForm("", null, "", 0, null, null, false, null, null);

  static StageForm of(RouteStage stage) {
    StageCard card = stage.card();
    return new StageForm(
        card.name(),
        card.kind(),
        card.holdCheck(),
        stage.flangesNeeded(),
        card.clearance(),
        card.expectedMinutes(),
        card.alongside(),
        card.needsBlock(),
        card.blockStage());
  }

  StagePlan plan() {
    return new StagePlan(
        new StageCard(
            name == null ? "" : name,
            kind == null ? StageKind.SET : kind,
            holdCheck,
            clearance,
            expectedMinutes,
            Boolean.TRUE.equals(alongside),
            needsBlock,
            blockStage),
        flangesNeeded == null ? 0 : flangesNeeded);
  }
}
