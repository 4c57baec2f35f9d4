package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;

/**
 * The fair pieces between corners put together again (FM-FIT). A corner station belongs to both of
 * its pieces: it is moved half way between their ends, takes the sharper curvature of the two and
 * the band that holds both.
 */
final class FitPieces {

  /** Feet of points that scatter past each other are kept this far apart, mm. */
  private static final double FEET_APART_MM = 0.02;

  private final List<Station> read;
  private final List<FitStation> fits = new ArrayList<>();
  private final double[] arcs;
  private int degreesOfFreedom;

  private FitPieces(List<Station> read) {
    this.read = read;
    this.arcs = new double[read.size()];
  }

  static FitPieces of(List<Station> stations, List<Corner> corners, double tolerance) {
    var pieces = new FitPieces(stations);
    int from = 0;
    for (int i = 1; i < stations.size(); i++) {
      int number = stations.get(i).number();
      boolean corner = corners.stream().anyMatch(c -> c.stationNumber() == number);
      if (corner || i == stations.size() - 1) {
        pieces.append(from, FairPiece.of(stations.subList(from, i + 1), tolerance), tolerance);
        from = i;
      }
    }
    return pieces;
  }

  private void append(int from, FairPiece piece, double tolerance) {
    double[] feet = inOrder(piece.fit().feet());
    var band = new CurvatureBand(piece, tolerance);
    for (int i = 0; i < feet.length; i++) {
      arcs[from + i] = arcs[from] + feet[i] - feet[0];
      var fit = station(read.get(from + i), piece.fit().curve(), feet[i], band);
      if (i == 0 && from > 0) {
        fits.set(from, joined(fits.get(from), fit));
      } else {
        fits.add(fit);
      }
    }
    degreesOfFreedom += piece.degreesOfFreedom();
  }

  private static double[] inOrder(double[] feet) {
    var ordered = feet.clone();
    for (int i = 1; i < ordered.length; i++) {
      ordered[i] = Math.max(ordered[i], ordered[i - 1] + FEET_APART_MM);
    }
    return ordered;
  }

  private static FitStation station(
      Station read, SpiralCurve curve, double foot, CurvatureBand band) {
    double perMm = curve.curvaturePerMm(foot);
    return new FitStation(
        read.number(),
        read.point(),
        curve.at(foot),
        curve.deviation(read.point(), foot),
        perMm,
        band.low(foot, perMm),
        band.high(foot, perMm));
  }

  private static FitStation joined(FitStation before, FitStation after) {
    boolean first = Math.abs(before.curvaturePerMm()) >= Math.abs(after.curvaturePerMm());
    return new FitStation(
        before.number(),
        before.measured(),
        before.fitted().halfWayTo(after.fitted()),
        (before.deviationMm() + after.deviationMm()) / 2,
        first ? before.curvaturePerMm() : after.curvaturePerMm(),
        Math.min(before.curvatureLowPerMm(), after.curvatureLowPerMm()),
        Math.max(before.curvatureHighPerMm(), after.curvatureHighPerMm()));
  }

  List<FitStation> stations() {
    return List.copyOf(fits);
  }

  int degreesOfFreedom() {
    return degreesOfFreedom;
  }

  Contour contour() {
    var moved = new ArrayList<Station>();
    for (int i = 0; i < fits.size(); i++) {
      moved.add(read.get(i).movedTo(fits.get(i).fitted()));
    }
    return Contour.known(
        moved, arcs, fits.stream().mapToDouble(FitStation::curvaturePerMm).toArray());
  }
}
