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
record MetalLookup(ShippedTables tables) {

  Metal find(String alloy, String temper, double thicknessMm) {
    List<MaterialRow> rows =
        tables.materials().stream()
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
        uniformStrain(rows, alloy, temper),
        null,
        minBendRadius(alloy, temper, thicknessMm));
  }

  /** The published exponent, unless its row sets it aside; else the one computed from strengths. */
  private @Nullable Sourced uniformStrain(List<MaterialRow> rows, String alloy, String temper) {
    Sourced published = first(rows, List.of(MaterialRow::uniformStrain));
    return published != null
        ? published
        : tables.hardening().stream()
            .filter(row -> row.isOf(alloy, temper))
            .findFirst()
            .map(row -> computed(row, rows))
            .orElse(null);
  }

  /** What is computed from recalled strengths is no better known than they are. */
  private static Sourced computed(HardeningRow row, List<MaterialRow> rows) {
    boolean recalled =
        rows.stream()
            .filter(metal -> Objects.equals(metal.utsTypMpa(), row.utsTypMpa()))
            .anyMatch(metal -> metal.knownBy().startsWith("memory"));
    String knownBy = recalled ? "memory of the strengths, " + row.knownBy() : row.knownBy();
    return new Sourced(row.nValue(), row.source(), knownBy);
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
        tables.radii().stream()
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
