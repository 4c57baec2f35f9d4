package dev.flangewright.forming;

import static dev.flangewright.forming.HoleFinding.Kind.IN_BEND_OR_FLANGE;
import static dev.flangewright.forming.HoleFinding.Kind.NEAR_BEND;
import static dev.flangewright.forming.HoleFinding.Kind.NEAR_EDGE;
import static dev.flangewright.forming.HoleFinding.Kind.NEAR_HOLE;
import static dev.flangewright.forming.HoleFinding.Kind.NEAR_RIM;
import static dev.flangewright.forming.HoleFinding.Kind.OUTSIDE;
import static dev.flangewright.forming.HoleFinding.Kind.RIMS_NEAR;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * Whether the holes of a web stand clear of edges, bends and each other.
 *
 * <pre>
 * FM-HOLE  centre to edge ≥ 2·D, centre to centre ≥ 3·D      holes that a rivet or a pin bears on
 *          centre to the other's rim ≥ 2·D                   such a hole beside a lightening hole
 *          rim to bend line ≥ 2·t, rim to rim ≥ 2·t          any hole; lightening holes
 * D diameter as drilled (mm), t thickness (mm)
 * </pre>
 *
 * <p>2 D and 3 D: AC 43.13-1B for rivets of a single row, as a glossary quotes it. 2·t to the bend
 * line and between lightening holes: common practice, no source. A pilot is checked with the
 * diameter it is drilled to: reckon with the rivet's. Distances are in the blank, before forming.
 * Tooling holes by {@link ToolPins}.
 */
public final class HoleCheck {

  private static final double DIAMETERS_TO_EDGE = 2;
  private static final double DIAMETERS_APART = 3;
  private static final double THICKNESSES = 2;

  private final PartDevelopment part;
  private final double clearanceMm;
  private final List<HoleFinding> findings = new ArrayList<>();

  private HoleCheck(PartDevelopment part, double thicknessMm) {
    this.part = part;
    this.clearanceMm = THICKNESSES * thicknessMm;
  }

  /** All that there is to mind; nothing for a part without holes. */
  public static List<HoleFinding> of(PartDevelopment part, double thicknessMm) {
    if (part.holes().isEmpty()) {
      return List.of();
    }
    var check = new HoleCheck(part, thicknessMm);
    check.places();
    check.pairs();
    check.findings.addAll(ToolPins.check(part));
    return List.copyOf(check.findings);
  }

  /** Where the outline has no area, there is no telling what lies within it. */
  private void places() {
    if (part.problem() != null) {
      return;
    }
    for (var hole : part.holes()) {
      if (isOutside(hole)) {
        findings.add(new HoleFinding(OUTSIDE, hole.label(), null, null));
      } else if (isOffTheWeb(hole)) {
        findings.add(new HoleFinding(IN_BEND_OR_FLANGE, hole.label(), null, null));
      } else {
        distances(hole);
      }
    }
  }

  private boolean isOutside(Hole hole) {
    return toEdge(hole) < hole.radiusMm()
        || !part.closedByChord() && !isWithin(part.outline(), hole);
  }

  private boolean isOffTheWeb(Hole hole) {
    return toBend(hole) < hole.radiusMm() || !part.closedByChord() && !isWithin(part.web(), hole);
  }

  private static boolean isWithin(List<Point> corners, Hole hole) {
    return Shapes.polygon(corners).contains(Shapes.point(hole.centre()));
  }

  private void distances(Hole hole) {
    double toEdge = toEdge(hole);
    double edge = DIAMETERS_TO_EDGE * hole.diameterMm();
    if (hole.bears() && toEdge < edge) {
      findings.add(HoleFinding.of(NEAR_EDGE, hole, toEdge, edge));
    }
    double toBend = toBend(hole) - hole.radiusMm();
    if (toBend < clearanceMm) {
      findings.add(HoleFinding.of(NEAR_BEND, hole, toBend, clearanceMm));
    }
  }

  /** The chord that closes a single flange is no edge. */
  private double toEdge(Hole hole) {
    Geometry edge =
        part.closedByChord()
            ? Shapes.line(part.outline())
            : Shapes.polygon(part.outline()).getBoundary();
    return edge.distance(Shapes.point(hole.centre()));
  }

  private double toBend(Hole hole) {
    return part.bendLines().stream()
        .mapToDouble(line -> Shapes.line(line).distance(Shapes.point(hole.centre())))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private void pairs() {
    for (int i = 0; i < part.holes().size(); i++) {
      for (int j = i + 1; j < part.holes().size(); j++) {
        pair(part.holes().get(i), part.holes().get(j));
      }
    }
  }

  private void pair(Hole one, Hole other) {
    double apart = one.centre().distanceMm(other.centre());
    if (one.bears() && other.bears()) {
      double want = DIAMETERS_APART * Math.max(one.diameterMm(), other.diameterMm());
      note(HoleFinding.of(NEAR_HOLE, one, other, apart, want));
    } else if (one.bears() || other.bears()) {
      var bearing = one.bears() ? one : other;
      var lightening = one.bears() ? other : one;
      double want = DIAMETERS_TO_EDGE * bearing.diameterMm();
      note(HoleFinding.of(NEAR_RIM, bearing, lightening, apart - lightening.radiusMm(), want));
    } else {
      double rims = apart - one.radiusMm() - other.radiusMm();
      note(HoleFinding.of(RIMS_NEAR, one, other, rims, clearanceMm));
    }
  }

  private void note(HoleFinding pair) {
    if (pair.haveMm() != null && pair.wantMm() != null && pair.haveMm() < pair.wantMm()) {
      findings.add(pair);
    }
  }
}
