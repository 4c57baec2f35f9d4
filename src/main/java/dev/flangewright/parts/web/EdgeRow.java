package dev.flangewright.parts.web;

import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.MetalValues;
import dev.flangewright.forming.SplitLimit;
import dev.flangewright.forming.StationFigures;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one way of leaving the edge does to the split limit of a flange.
 *
 * @param chosen whether the flange's edge is left this way
 * @param over whether the edge would be past its limit
 */
record EdgeRow(
    String label, Figure factor, Figure limit, Figure utilisation, boolean chosen, boolean over) {

  /** One for every condition, from the best to the worst; none for an edge that never stretches. */
  static List<EdgeRow> of(FlangeFigures figures, MetalValues metal, EdgeCondition chosen) {
    double stretch =
        figures.formed().stream().mapToDouble(StationFigures::edgeStrain).max().orElse(0);
    return stretch <= 0
        ? List.of()
        : Arrays.stream(EdgeCondition.values())
            .map(edge -> of(edge, stretch, SplitLimit.strain(metal, edge), edge == chosen))
            .toList();
  }

  private static EdgeRow of(
      EdgeCondition edge, double stretch, @Nullable Double limit, boolean chosen) {
    Double utilisation = SplitLimit.utilisation(stretch, limit);
    return new EdgeRow(
        edge.label(),
        Figure.of(edge.factor(), 2, ""),
        Figure.percent(limit, 2),
        Figure.percent(utilisation, 0),
        chosen,
        utilisation != null && utilisation > 1);
  }
}
