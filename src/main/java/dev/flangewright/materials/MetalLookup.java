package dev.flangewright.materials;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Chooses, out of several tables, the row that answers for an alloy, temper and thickness. */
record MetalLookup(List<MaterialRow> materials, List<BendRadiusRow> radii) {

  Metal find(String alloy, String temper, double thicknessMm) {
    List<MaterialRow> rows =
        materials.stream()
            .filter(row -> row.alloy().equalsIgnoreCase(alloy))
            .filter(row -> row.temper().equalsIgnoreCase(temper))
            .filter(row -> row.covers(thicknessMm))
            .sorted(Comparator.comparing(MaterialRow::isForAnyThickness))
            .toList();
    return new Metal(
        alloy,
        temper,
        thicknessMm,
        first(rows, List.of(MaterialRow::densityKgM3)),
        first(rows, List.of(row -> row.youngGpa() == null ? null : row.youngGpa() * 1000)),
        first(rows, List.of(MaterialRow::proofTypMpa, MaterialRow::proofMinMpa)),
        first(rows, List.of(MaterialRow::utsTypMpa, MaterialRow::utsMinMpa)),
        first(rows, List.of(MaterialRow::elongationMinPct, MaterialRow::elongationTypPct)),
        first(rows, List.of(MaterialRow::uniformStrain)),
        minBendRadius(alloy, temper, thicknessMm));
  }

  /** The first value in the order of the columns, then of the rows. */
  private static @Nullable Sourced first(
      List<MaterialRow> rows, List<Function<MaterialRow, @Nullable Double>> columns) {
    return columns.stream()
        .flatMap(column -> rows.stream().map(row -> sourced(row, column.apply(row))))
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  private static @Nullable Sourced sourced(MaterialRow row, @Nullable Double value) {
    return value == null ? null : new Sourced(value, row.source(), row.knownBy());
  }

  /** The upper figure of the most cautious table that reaches this thickness. */
  private @Nullable Sourced minBendRadius(String alloy, String temper, double thicknessMm) {
    Map<String, List<BendRadiusRow>> bySource =
        radii.stream()
            .filter(row -> row.alloy().equalsIgnoreCase(alloy))
            .filter(row -> row.temper().equalsIgnoreCase(temper))
            .collect(
                Collectors.groupingBy(BendRadiusRow::source, TreeMap::new, Collectors.toList()));
    return bySource.values().stream()
        .map(table -> interpolated(table, thicknessMm))
        .filter(Objects::nonNull)
        .max(Comparator.comparingDouble(Sourced::value))
        .orElse(null);
  }

  /** Linear in thickness between a table's rows; null outside them, but thinner takes the first. */
  private static @Nullable Sourced interpolated(List<BendRadiusRow> table, double thicknessMm) {
    List<BendRadiusRow> rows =
        table.stream().sorted(Comparator.comparingDouble(BendRadiusRow::thkMm)).toList();
    BendRadiusRow below = rows.get(0);
    for (BendRadiusRow above : rows) {
      if (above.thkMm() >= thicknessMm) {
        double span = above.thkMm() - below.thkMm();
        double share = span <= 0 ? 1 : Math.max(0, (thicknessMm - below.thkMm()) / span);
        double ratio = below.rOverTHigh() + share * (above.rOverTHigh() - below.rOverTHigh());
        return new Sourced(ratio * thicknessMm, above.source(), above.knownBy());
      }
      below = above;
    }
    return null;
  }
}
