package dev.flangewright.parts.web;

import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.ShopValue;
import dev.flangewright.forming.SplitLimit;
import dev.flangewright.forming.StationFigures;
import dev.flangewright.parts.PartFigures;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What one way of leaving the edge does to the split limit of a flange.
 *
 * @param chosen whether the flange's edge is left this way
 * @param over whether the edge would be past its limit
 */
record EdgeRow(
    String label, Figure factor, Figure limit, Figure utilisation, boolean chosen, boolean over) {

  /** One for every condition, from the best to the worst; none for an edge that never stretches. */
  static List<EdgeRow> of(FlangeFigures figures, PartFigures part, EdgeCondition chosen) {
    double stretch =
        figures.formed().stream().mapToDouble(StationFigures::edgeStrain).max().orElse(0);
    return stretch <= 0
        ? List.of()
        : Arrays.stream(EdgeCondition.values())
            .map(edge -> of(edge, stretch, part, edge == chosen))
            .toList();
  }

  /** Where the factors and the elongation come from. */
  static String standing(PartFigures part) {
    List<ShopValue> factors =
        Stream.concat(
                Arrays.stream(EdgeCondition.values()).map(ShopValue::of),
                Stream.of(ShopValue.GRAIN_FACTOR))
            .toList();
    String own =
        factors.stream()
            .filter(part.shopValues()::isOwn)
            .map(which -> which.label() + ": " + part.shopValues().of(which).source())
            .collect(Collectors.joining(". "));
    String rest =
        own.isEmpty()
            ? "The factors are a shop default, no published source."
            : "This build's own: " + own + ". Other factors are a shop default, no source.";
    return rest + " By the " + FlangeFiguresView.elongation(part.metal()) + ".";
  }

  private static EdgeRow of(EdgeCondition edge, double stretch, PartFigures part, boolean chosen) {
    Double limit = SplitLimit.strain(part.metalValues(), edge, part.practice());
    Double utilisation = SplitLimit.utilisation(stretch, limit);
    return new EdgeRow(
        edge.label(),
        Figure.of(part.practice().edgeFactor(edge), 2, ""),
        Figure.percent(limit, 2),
        Figure.percent(utilisation, 0),
        chosen,
        utilisation != null && utilisation > 1);
  }
}
