package dev.flangewright.blocks.web;

import dev.flangewright.blocks.PartBevels;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.forming.BevelTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The bevel table of one flange; parts that read alike, as the two of a handed pair, share it.
 *
 * @param twoSets where the first of two sets of form blocks is to bring the flange; empty where one
 *     set serves
 * @param isKnown whether what springback needs of the metal is known
 * @param ground where it comes from; empty where it is not known
 */
record BevelView(
    String flange,
    String kind,
    List<String> partNumbers,
    List<BevelRow> rows,
    String twoSets,
    boolean isKnown,
    String ground) {

  static List<BevelView> of(List<PartBevels> parts) {
    Map<BevelView, List<String>> sharedBy = new LinkedHashMap<>();
    for (PartBevels part : parts) {
      for (PartBevels.OfFlange flange : part.flanges()) {
        sharedBy
            .computeIfAbsent(of(flange), table -> new ArrayList<>())
            .add(part.part().partNumber());
      }
    }
    List<BevelView> views = new ArrayList<>();
    sharedBy.forEach((table, numbers) -> views.add(table.sharedBy(numbers)));
    return views;
  }

  private static BevelView of(PartBevels.OfFlange flange) {
    List<BevelRow> rows =
        BevelTable.of(flange.figures()).rows().stream().map(BevelRow::of).toList();
    return new BevelView(
        flange.flange(),
        flange.figures().kind().label(),
        List.of(),
        rows,
        twoSets(flange.firstBlockAngleDeg(), flange.figures().peakStation()),
        rows.stream().noneMatch(row -> row.block().isEmpty()),
        flange.ground());
  }

  private BevelView sharedBy(List<String> numbers) {
    return new BevelView(flange, kind, List.copyOf(numbers), rows, twoSets, isKnown, ground);
  }

  private static String twoSets(@Nullable Double firstAngleDeg, int station) {
    return firstAngleDeg == null
        ? ""
        : "Two stages of form blocks are advised, the first to bring the flange to %s° at station %d."
            .formatted(Numbers.figure(firstAngleDeg, 1), station);
  }
}
