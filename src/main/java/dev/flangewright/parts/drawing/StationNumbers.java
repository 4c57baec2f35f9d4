package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Scale;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.StationFigures;
import java.util.List;

/** Station numbers beside an edge, on the side without teeth, as many as have room. */
record StationNumbers(Comb comb) {

  private static final double ROOM = 66;
  private static final double OFF_THE_LINE = 20;

  void draw(Svg svg) {
    List<StationFigures> stations = comb.edge().stations();
    int every = every(stations);
    for (int i = 1; i < stations.size() - 1; i++) {
      if (stations.get(i).number() % every != 0 || isByPeak(i) || isInACutout(i)) {
        continue;
      }
      Spot at = beside(i, stations.get(i));
      svg.quiet(
          new Spot(at.x(), at.y() + 5), Anchor.MIDDLE, String.valueOf(stations.get(i).number()));
    }
  }

  private int every(List<StationFigures> stations) {
    double mean = comb.edge().contour().lengthMm() / (stations.size() - 1);
    return (int) Math.max(1, Scale.roundStep(Math.ceil(ROOM / (mean * comb.fit().scale()))));
  }

  /** Where a stretching edge's peak has its leader line, on this side. */
  private boolean isByPeak(int i) {
    FormedEdge edge = comb.edge();
    double apart = Math.abs(edge.contour().arcMm(i) - edge.contour().arcMm(edge.peakIndex()));
    return edge.peak() > 0 && apart * comb.fit().scale() < ROOM / 2;
  }

  /** There the number would stand in the notch, or over it. */
  private boolean isInACutout(int i) {
    double arc = comb.edge().stations().get(i).arcMm();
    return comb.edge().figures().pieces().stream()
        .anyMatch(piece -> !piece.hasMetal() && piece.fromMm() <= arc && arc <= piece.toMm());
  }

  private Spot beside(int i, StationFigures station) {
    double off = OFF_THE_LINE / comb.fit().scale();
    boolean teethOutward = station.edgeStrain() < 0;
    double toBendLine = station.blankBeyondMouldLineMm() + station.setbackMm();
    return comb.outward(i, teethOutward ? -toBendLine - off : off);
  }
}
