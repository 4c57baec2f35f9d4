package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Fit;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.Point;
import dev.flangewright.forming.StationFigures;
import java.util.ArrayList;
import java.util.List;

/**
 * The strain along an edge as a comb on the line to cut: at each station a tooth at right angles to
 * the contour, its length in proportion to the strain, away from the web where the edge shrinks and
 * into it where the edge stretches.
 *
 * @param mmPerStrain length of a tooth on the plan for a strain of 1
 * @param deepest the strain, positive, that gets the deepest colour step
 */
record Comb(FormedEdge edge, Fit fit, double mmPerStrain, double deepest) {

  private static final int STEPS = 5;

  void draw(Svg svg) {
    splitLimit(svg);
    for (int i = 0; i < edge.stations().size(); i++) {
      if (!edge.isCutAway(i)) {
        svg.path(toothClass(edge.stations().get(i)), Lines.open(foot(i), tip(i)));
      }
    }
  }

  /** Where a tooth stands on the line to cut. */
  Spot foot(int i) {
    return outward(i, 0);
  }

  Spot tip(int i) {
    return outward(i, -edge.stations().get(i).edgeStrain() * mmPerStrain);
  }

  /** A spot off the line to cut, away from the web by a length on the plan, mm. */
  Spot outward(int i, double mm) {
    return onPaper(edge.contour().offset(i, edge.stations().get(i).blankBeyondMouldLineMm() + mm));
  }

  private Spot onPaper(Point point) {
    return fit.at(point.xMm(), point.yMm());
  }

  private String toothClass(StationFigures station) {
    if (edge.isPastSplitLimit(station)) {
      return "d-tooth d-tooth-over";
    }
    double share = Math.abs(station.edgeStrain()) / deepest;
    return "d-tooth d-step-" + (int) Math.min(STEPS, Math.max(1, Math.ceil(share * STEPS)));
  }

  /** A fine line across the teeth of each stretching run, as far in as a tooth may reach. */
  private void splitLimit(Svg svg) {
    Double limit = edge.splitLimit();
    if (limit == null || limit > deepest) {
      return;
    }
    List<Spot> run = new ArrayList<>();
    for (int i = 0; i < edge.stations().size(); i++) {
      if (edge.stations().get(i).kind() == FlangeKind.STRETCH && !edge.isCutAway(i)) {
        run.add(outward(i, -limit * mmPerStrain));
      } else {
        svg.path("d-limit", Lines.open(run));
        run.clear();
      }
    }
    svg.path("d-limit", Lines.open(run));
  }
}
