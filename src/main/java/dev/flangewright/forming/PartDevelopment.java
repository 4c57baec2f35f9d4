package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The developed (flat) outline of a part, in the axes of its contours.
 *
 * <p>FM-OUT: every station is moved at right angles to its mould line, away from the web, by the
 * blank beyond the tangent line less the setback; the bend line is the mould line moved towards the
 * web by the setback. Flanges are joined in travel order, each next one the nearest to where the
 * last ended, by straight ends; a single flange is closed by its chord. Neglected: corner reliefs,
 * the bend's own run-out at the ends, and the arc between stations: the outline is the polygon
 * through them, which cuts c³/(12R) off the area at a chord c and radius R. Derived.
 *
 * <p>FM-MASS: mass = density·t·area, kg.
 *
 * @param outline corners of the blank in order, counter-clockwise, the last not repeating the first
 * @param bendLines the tangent line of every flange, in the order given
 * @param closedByChord whether a single flange was closed by its chord: the web's far side is not
 *     known, so area and mass are those of the piece up to the chord
 * @param areaMm2 null when the outline has no area to speak of
 * @param bounds the outline's bounding box
 * @param problem what is wrong with the outline, in a plain sentence; null when nothing is
 */
public record PartDevelopment(
    List<Point> outline,
    List<List<Point>> bendLines,
    boolean closedByChord,
    @Nullable Double areaMm2,
    Bounds bounds,
    @Nullable String problem) {

  /** A box along the axes, mm. */
  public record Bounds(double minXMm, double minYMm, double maxXMm, double maxYMm) {

    public double widthMm() {
      return maxXMm - minXMm;
    }

    public double heightMm() {
      return maxYMm - minYMm;
    }
  }

  /**
   * @param flanges the part's contours, at least one
   * @param figures of the same flanges, in the same order
   */
  public static PartDevelopment of(List<Contour> flanges, List<FlangeFigures> figures) {
    var edges = new ArrayList<List<Point>>();
    var bendLines = new ArrayList<List<Point>>();
    for (int f = 0; f < flanges.size(); f++) {
      var stations = figures.get(f).stations();
      var edge = new ArrayList<Point>();
      var bendLine = new ArrayList<Point>();
      for (int i = 0; i < stations.size(); i++) {
        edge.add(flanges.get(f).offset(i, stations.get(i).blankBeyondMouldLineMm()));
        bendLine.add(flanges.get(f).offset(i, -stations.get(i).setbackMm()));
      }
      edges.add(List.copyOf(edge));
      bendLines.add(List.copyOf(bendLine));
    }
    var outline = Outline.through(edges);
    return new PartDevelopment(
        outline.corners(),
        List.copyOf(bendLines),
        flanges.size() == 1,
        outline.areaMm2(),
        outline.bounds(),
        outline.problem());
  }

  /** FM-MASS, kg; null when the density or the area is unknown. */
  public @Nullable Double massKg(@Nullable Double densityKgM3, double thicknessMm) {
    return densityKgM3 == null || areaMm2 == null
        ? null
        : densityKgM3 * thicknessMm * areaMm2 * 1e-9;
  }
}
