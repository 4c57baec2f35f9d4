package dev.flangewright.forming;

import static dev.flangewright.forming.HoleFinding.Kind.FITS_MIRRORED;
import static dev.flangewright.forming.HoleFinding.Kind.FITS_TURNED;
import static dev.flangewright.forming.HoleFinding.Kind.TOOLING_NEAR;
import static dev.flangewright.forming.HoleFinding.Kind.TOO_FEW_TOOLING;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Whether the tool pins hold a blank in one way only.
 *
 * <p>FM-HOLE: two tooling holes at least, far apart, unsymmetric so that a wrong hand does not load
 * (common practice, no source). Every way of laying the blank on the pins is tried that carries one
 * pair of holes onto another: it fits when each hole then stands within {@link #PLAY_MM} of a pin
 * of its own diameter, to {@link #SAME_DIAMETER_MM}. Mirrored is the blank turned over, and equally
 * one of the other hand. How far the outline then stands off (Hausdorff distance of the corners)
 * tells whether the eye would catch it. Two holes alone always fit mirrored about the line through
 * them. Derived.
 */
final class ToolPins {

  /**
   * Holes found so near to a pin go on it, mm: twice the usual ±0.25 mm on the place of a tooling
   * hole (common practice, no source).
   */
  static final double PLAY_MM = 0.5;

  /** Diameters nearer than this are one, mm: the usual +0.10 mm of a pin hole, no source. */
  static final double SAME_DIAMETER_MM = 0.1;

  /** Share of the blank's length that tooling holes should span: shop default, no source. */
  static final double SPAN = 0.5;

  private final List<Hole> pins;
  private final List<Point> outline;

  /** Places in the list of the two that stand farthest apart. */
  private int from;

  private int to = 1;

  private ToolPins(List<Hole> pins, List<Point> outline) {
    this.pins = pins;
    this.outline = outline;
    for (int i = 0; i < pins.size(); i++) {
      for (int j = i + 1; j < pins.size(); j++) {
        if (pins.get(i).centre().distanceMm(pins.get(j).centre()) > span()) {
          from = i;
          to = j;
        }
      }
    }
  }

  static List<HoleFinding> check(PartDevelopment part) {
    var pins = part.holes().stream().filter(h -> h.kind() == HoleKind.TOOLING).toList();
    if (pins.size() < 2) {
      return List.of(new HoleFinding(TOO_FEW_TOOLING, "", null, null));
    }
    var ways = new ToolPins(pins, part.outline());
    var findings = new ArrayList<HoleFinding>();
    var cut = part.cut();
    double want = cut == null ? 0 : SPAN * cut.rectangle().lengthMm();
    if (ways.span() < want) {
      findings.add(new HoleFinding(TOOLING_NEAR, "", ways.span(), want));
    }
    ways.offBy(false).ifPresent(off -> findings.add(new HoleFinding(FITS_TURNED, "", off, null)));
    ways.offBy(true).ifPresent(off -> findings.add(new HoleFinding(FITS_MIRRORED, "", off, null)));
    return findings;
  }

  private double span() {
    return pins.get(from).centre().distanceMm(pins.get(to).centre());
  }

  /** The least that the outline stands off in a wrong way that fits; empty when none fits. */
  private OptionalDouble offBy(boolean mirrored) {
    var here = Shapes.line(outline);
    return wrongWays(mirrored).stream()
        .mapToDouble(way -> standOff(here, way.transform(here)))
        .min();
  }

  private static double standOff(Geometry here, Geometry there) {
    return Math.max(
        DiscreteHausdorffDistance.distance(here, there),
        DiscreteHausdorffDistance.distance(there, here));
  }

  private List<AffineTransformation> wrongWays(boolean mirrored) {
    var ways = new ArrayList<AffineTransformation>();
    for (int i = 0; i < pins.size(); i++) {
      for (int j = 0; j < pins.size(); j++) {
        boolean asDrawn = i == from && j == to && !mirrored;
        if (i != j && !asDrawn) {
          ways.add(carryingOnto(pins.get(i).centre(), pins.get(j).centre(), mirrored));
        }
      }
    }
    ways.removeIf(way -> !fits(way));
    return ways;
  }

  /** Carries the two holes farthest apart onto the given places, middle onto middle. */
  private AffineTransformation carryingOnto(Point first, Point second, boolean mirrored) {
    var a = pins.get(from).centre();
    var b = pins.get(to).centre();
    var middle = a.halfWayTo(b);
    var target = first.halfWayTo(second);
    var way =
        AffineTransformation.translationInstance(-middle.xMm(), -middle.yMm())
            .rotate(-a.headingTo(b));
    if (mirrored) {
      way.scale(1, -1);
    }
    return way.rotate(first.headingTo(second)).translate(target.xMm(), target.yMm());
  }

  private boolean fits(AffineTransformation way) {
    return pins.stream().allMatch(hole -> pins.stream().anyMatch(pin -> goesOn(hole, pin, way)));
  }

  private static boolean goesOn(Hole hole, Hole pin, AffineTransformation way) {
    var there = way.transform(Shapes.at(hole.centre()), new Coordinate());
    return Math.abs(hole.diameterMm() - pin.diameterMm()) <= SAME_DIAMETER_MM
        && there.distance(Shapes.at(pin.centre())) <= PLAY_MM;
  }
}
