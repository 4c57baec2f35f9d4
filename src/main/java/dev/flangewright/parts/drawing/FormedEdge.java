package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Numbers;
import dev.flangewright.forming.Contour;
import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.Ruffling;
import dev.flangewright.forming.SplitLimit;
import dev.flangewright.forming.StationFigures;
import dev.flangewright.parts.PartFigures;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A flange edge as it is drawn.
 *
 * @param name of the flange, as in the register
 * @param figures at the width carried while forming
 * @param splitLimit strain at which the edge splits; null when the metal's elongation is unknown
 */
public record FormedEdge(
    String name,
    Contour contour,
    FlangeFigures figures,
    double thicknessMm,
    @Nullable Double splitLimit) {

  private static final double LIMIT_IN_SIGHT = 2;

  /** The edges of a part, in the order of its figures. */
  public static List<FormedEdge> of(PartFigures part) {
    return part.flanges().stream().map(flange -> of(part, flange)).toList();
  }

  /** One edge of a part. */
  public static FormedEdge of(PartFigures part, PartFigures.OfFlange flange) {
    return new FormedEdge(
        flange.flange().name(),
        flange.contour(),
        flange.working(),
        part.sheet().thicknessMm(),
        SplitLimit.strain(part.metalValues(), flange.flange().edgeCondition(), part.practice()));
  }

  List<StationFigures> stations() {
    return figures.stations();
  }

  /** Whether the flange is cut away at a station, by its place in the list. */
  boolean isCutAway(int i) {
    return figures.isCutAway(i);
  }

  /** Place of the peak station in the list. */
  int peakIndex() {
    int i = 0;
    while (stations().get(i).number() != figures.peakStation()) {
      i++;
    }
    return i;
  }

  double peak() {
    return figures.peakEdgeStrain();
  }

  /** Largest stretch strain; 0 for an edge that only shrinks. */
  double mostStretch() {
    return Math.max(
        0, figures.formed().stream().mapToDouble(StationFigures::edgeStrain).max().orElse(0));
  }

  /** The strain up to which stretch is drawn: a limit far beyond the peak is only stated. */
  double stretchInSight() {
    double stretch = mostStretch();
    return splitLimit == null || splitLimit > LIMIT_IN_SIGHT * stretch
        ? stretch
        : Math.max(splitLimit, stretch);
  }

  /** Largest shrink strain, negative; 0 for an edge that only stretches. */
  double mostShrink() {
    return Math.min(
        0, figures.formed().stream().mapToDouble(StationFigures::edgeStrain).min().orElse(0));
  }

  boolean isPastSplitLimit(StationFigures station) {
    return splitLimit != null && station.edgeStrain() > splitLimit;
  }

  /** The strain, negative, at which this station's edge begins to ruffle. */
  double ruffleStrain(StationFigures station) {
    return -Ruffling.criticalStrain(thicknessMm, station.flatWidthMm());
  }

  /** What the edge has to do and where most, as a sentence. */
  String said() {
    if (peak() == 0) {
      return "The %s edge is straight: folding alone makes it.".formatted(name);
    }
    StationFigures station = stations().get(peakIndex());
    return "The %s edge has to %s most at station %d, %s mm along the mould line: %s."
        .formatted(
            name,
            peak() < 0 ? "shrink" : "stretch",
            station.number(),
            Numbers.figure(station.arcMm(), 0),
            Numbers.percent(peak()));
  }

  /** The peak as it is lettered on a leader line. */
  String peakLabel() {
    return Numbers.percent(peak()) + " at station " + figures.peakStation();
  }
}
