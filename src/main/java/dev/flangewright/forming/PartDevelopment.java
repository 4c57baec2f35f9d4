package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The developed (flat) outline of a part, in the axes of its contours.
 *
 * <p>FM-OUT: every station is moved at right angles to its mould line, away from the web, by the
 * blank beyond the tangent line less the setback; the bend line is the mould line moved towards the
 * web by the setback. A cutout (FM-CUT) is a notch whose sides run at right angles to the mould
 * line, and the bend line is broken where it goes through. Flanges are joined in travel order, each
 * next one the nearest to where the last ended, by straight ends; a single flange is closed by its
 * chord. Neglected: corner reliefs, the bend's own run-out at the ends, and the arc between
 * stations: the outline is the polygon through them, which cuts c³/(12R) off the area at a chord c
 * and radius R. Derived.
 *
 * <p>FM-MASS: mass = density·t·area of the blank as cut, kg.
 *
 * @param outline corners of the blank in order, counter-clockwise, the last not repeating the first
 * @param bendLines the runs of every flange's tangent line that are bent, in the order given
 * @param web corners of the web within the tangent lines
 * @param closedByChord whether a single flange was closed by its chord: the web's far side is not
 *     known, so area and mass are those of the piece up to the chord
 * @param areaMm2 within the outline, holes taken off; null when it has no area to speak of
 * @param bounds the outline's bounding box
 * @param problem what is wrong with the outline, in a plain sentence; null when nothing is
 * @param holes in the web
 * @param cut the blank to cut; null where the outline has no area
 */
public record PartDevelopment(
    List<Point> outline,
    List<List<Point>> bendLines,
    List<Point> web,
    boolean closedByChord,
    @Nullable Double areaMm2,
    Bounds bounds,
    @Nullable String problem,
    List<Hole> holes,
    @Nullable CutBlank cut) {

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
   * A part without holes, cut to its outline.
   *
   * @param flanges the part's contours, at least one
   * @param figures of the same flanges, in the same order
   */
  public static PartDevelopment of(List<Contour> flanges, List<FlangeFigures> figures) {
    return of(flanges, figures, List.of(), 0);
  }

  /**
   * @param flanges the part's contours, at least one
   * @param figures of the same flanges, in the same order
   * @param allowanceMm trim allowance outside the outline, from 0 to 100
   */
  public static PartDevelopment of(
      List<Contour> flanges, List<FlangeFigures> figures, List<Hole> holes, double allowanceMm) {
    var edges = new ArrayList<DevelopedEdge>();
    for (int f = 0; f < flanges.size(); f++) {
      edges.add(DevelopedEdge.of(flanges.get(f), figures.get(f)));
    }
    var outline = Outline.through(edges.stream().map(DevelopedEdge::edge).toList());
    Double area = outline.areaMm2();
    double drilled = area == null ? 0 : drilledMm2(outline.corners(), holes);
    return new PartDevelopment(
        outline.corners(),
        edges.stream().flatMap(edge -> edge.bendLines().stream()).toList(),
        Outline.through(edges.stream().map(DevelopedEdge::tangentLine).toList()).corners(),
        flanges.size() == 1,
        area == null ? null : area - drilled,
        outline.bounds(),
        outline.problem(),
        List.copyOf(holes),
        area == null ? null : CutBlank.of(outline.corners(), allowanceMm, drilled));
  }

  /** Holes that reach over the outline are not counted: they are reported instead. */
  private static double drilledMm2(List<Point> outline, List<Hole> holes) {
    var blank = Shapes.polygon(outline);
    return holes.stream()
        .filter(hole -> blank.contains(Shapes.point(hole.centre())))
        .filter(
            hole -> blank.getBoundary().distance(Shapes.point(hole.centre())) >= hole.radiusMm())
        .mapToDouble(Hole::areaMm2)
        .sum();
  }

  /** FM-MASS, kg; null when the density or the area is unknown. */
  public @Nullable Double massKg(@Nullable Double densityKgM3, double thicknessMm) {
    return densityKgM3 == null || cut == null
        ? null
        : densityKgM3 * thicknessMm * cut.areaMm2() * 1e-9;
  }
}
