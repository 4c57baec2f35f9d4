package dev.flangewright.bench;

import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.materials.Thickness;
import dev.flangewright.stock.SheetMetal;
import dev.flangewright.stock.SheetNeed;
import dev.flangewright.stock.SheetsOfBuild;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What is missing of the sheet that parts are cut from; each metal of a build is looked up once.
 */
final class SheetTable {

  private final SheetsOfBuild sheets;
  private final MaterialLibrary library;
  private final Map<Long, BuildRoute> routes;
  private final Map<Drawn, Optional<String>> known = new HashMap<>();

  private record Drawn(String alloy, String temper, String thickness, boolean heatTreated) {}

  SheetTable(SheetsOfBuild sheets, MaterialLibrary library, Map<Long, BuildRoute> routes) {
    this.sheets = sheets;
    this.library = library;
    this.routes = routes;
  }

  /** As a sentence; empty if nothing is known to stand in the way. */
  Optional<String> lacking(PartLine part) {
    Drawn drawn =
        new Drawn(part.alloy(), part.temper(), part.thickness(), isHeatTreated(part.id()));
    return known.computeIfAbsent(drawn, this::lookUp);
  }

  private boolean isHeatTreated(long partId) {
    return Optional.ofNullable(routes.get(partId)).stream()
        .flatMap(route -> route.stages().stream())
        .anyMatch(stage -> stage.kind() == StageKind.HEAT_TREAT);
  }

  private Optional<String> lookUp(Drawn drawn) {
    double thicknessMm = library.thickness(drawn.thickness()).map(Thickness::mm).orElse(0.0);
    SheetMetal metal = new SheetMetal(drawn.alloy(), drawn.temper(), thicknessMm);
    return sheets.lacking(new SheetNeed(metal, drawn.heatTreated()));
  }
}
