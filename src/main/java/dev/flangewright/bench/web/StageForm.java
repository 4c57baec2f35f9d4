package dev.flangewright.bench.web;

import dev.flangewright.bench.StageKind;
import dev.flangewright.bench.StagePlan;
import org.jspecify.annotations.Nullable;

/**
 * A stage as typed in the route editor.
 *
 * @param seal the route that the page showed
 */
record StageForm(
    @Nullable String name,
    @Nullable StageKind kind,
    @Nullable String holdCheck,
    @Nullable Integer flangesNeeded,
    @Nullable String seal) {

  StagePlan plan() {
    return new StagePlan(
        name == null ? "" : name,
        kind == null ? StageKind.SET : kind,
        holdCheck,
        flangesNeeded == null ? 0 : flangesNeeded);
  }

  String sealed() {
    return seal == null ? "" : seal;
  }
}
