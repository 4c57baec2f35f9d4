package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of a flange that is alike from end to end: between cutouts, or under one.
 *
 * @param fromMm along the mould line
 * @param toMm along the mould line
 * @param cutout null between cutouts
 * @param first place of the first of its stations in the contour, from 0
 * @param stations from the last one at or before the stretch to the first one at or after it, with
 *     the figures that hold here: at least two
 */
public record EdgePiece(
    double fromMm, double toMm, @Nullable Cutout cutout, int first, List<StationFigures> stations) {

  /** A station this near to the end of a stretch is that end, mm: as near as stations may stand. */
  private static final double SAME_PLACE_MM = 0.01;

  /** The figures of the i-th station, from 0, if the flange were at most so wide there. */
  interface Narrowed {
    StationFigures at(int i, double atMostMm);
  }

  /**
   * Lays a flange's cutouts along its contour.
   *
   * @param whole the figures of every station as if nothing were cut
   * @throws FormingException when cutouts overlap, reach beyond the contour, end in the bend or
   *     leave nothing
   */
  static List<EdgePiece> of(List<StationFigures> whole, List<Cutout> cutouts, Narrowed narrowed) {
    var inOrder = cutouts.stream().sorted(Comparator.comparingDouble(Cutout::fromMm)).toList();
    double length = whole.get(whole.size() - 1).arcMm();
    var pieces = new ArrayList<EdgePiece>();
    double reached = 0;
    for (var cutout : inOrder) {
      double from = begin(cutout, reached);
      double to = end(cutout, length);
      if (from > reached) {
        pieces.add(between(reached, from, null, whole));
      }
      pieces.add(under(between(from, to, cutout, whole), narrowed));
      reached = to;
    }
    if (reached < length) {
      pieces.add(between(reached, length, null, whole));
    }
    if (pieces.stream().noneMatch(EdgePiece::hasMetal)) {
      throw FormingException.of(
          FormingException.Reason.NOTHING_LEFT, FormingInput.CUT_TO.field(), null, null);
    }
    return List.copyOf(pieces);
  }

  private static double begin(Cutout cutout, double reached) {
    if (cutout.fromMm() < reached - Cutout.ROUNDING_MM || cutout.toMm() <= reached) {
      throw FormingException.of(
          FormingException.Reason.CUTOUTS_OVERLAP,
          FormingInput.CUT_FROM.field(),
          cutout.fromMm(),
          null);
    }
    return cutout.fromMm() < reached + Cutout.ROUNDING_MM ? reached : cutout.fromMm();
  }

  private static double end(Cutout cutout, double length) {
    if (cutout.fromMm() >= length || cutout.toMm() > length + Cutout.ROUNDING_MM) {
      throw FormingException.of(
          FormingException.Reason.OUT_OF_RANGE,
          FormingInput.CUT_TO.field(),
          cutout.toMm(),
          Range.fromTo(0, length));
    }
    return cutout.toMm() > length - Cutout.ROUNDING_MM ? length : cutout.toMm();
  }

  private static EdgePiece between(
      double from, double to, @Nullable Cutout cutout, List<StationFigures> whole) {
    int first = 0;
    while (whole.get(first + 1).arcMm() <= from) {
      first++;
    }
    int last = first + 1;
    while (whole.get(last).arcMm() < to) {
      last++;
    }
    return new EdgePiece(from, to, cutout, first, whole.subList(first, last + 1));
  }

  private static EdgePiece under(EdgePiece piece, Narrowed narrowed) {
    var cutout = piece.cutout;
    if (cutout == null) {
      return piece;
    }
    piece.stations.forEach(cutout::clearsTheBend);
    Double left = cutout.leftMm();
    if (left == null || left < 0) {
      return piece;
    }
    var stations = new ArrayList<StationFigures>();
    for (int i = 0; i < piece.stations.size(); i++) {
      stations.add(narrowed.at(piece.first + i, left));
    }
    return new EdgePiece(piece.fromMm, piece.toMm, cutout, piece.first, List.copyOf(stations));
  }

  /** Whether any flange is left here. */
  public boolean hasMetal() {
    return cutout == null || cutout.leavesFlange();
  }

  /** Where the strain along the stretch is known or begins and ends, along the mould line, mm. */
  public List<Double> arcsMm() {
    return DoubleStream.concat(
            DoubleStream.of(fromMm, toMm), stations.stream().mapToDouble(StationFigures::arcMm))
        .filter(arc -> arc >= fromMm && arc <= toMm)
        .sorted()
        .distinct()
        .boxed()
        .toList();
  }

  /** Strain of the edge at a place on the stretch, linear between stations. */
  public double edgeStrainAt(double arcMm) {
    int i = 1;
    while (i < stations.size() - 1 && stations.get(i).arcMm() < arcMm) {
      i++;
    }
    return at(i, arcMm, StationFigures::edgeStrain);
  }

  /** Whether the i-th station of the contour, from 0, stands on the stretch or next to its end. */
  boolean counts(int i) {
    return i >= first && i < first + stations.size();
  }

  double integral(ToDoubleFunction<StationFigures> density) {
    return integral(density, fromMm, toMm);
  }

  /** By the trapezoid rule, linear between stations; the part of the stretch within from and to. */
  double integral(ToDoubleFunction<StationFigures> density, double from, double to) {
    double sum = 0;
    for (int i = 1; i < stations.size(); i++) {
      double start = Math.max(Math.max(from, fromMm), stations.get(i - 1).arcMm());
      double end = Math.min(Math.min(to, toMm), stations.get(i).arcMm());
      if (end > start) {
        double mean = (at(i, start, density) + at(i, end, density)) / 2;
        sum += mean * (end - start);
      }
    }
    return sum;
  }

  /** A figure between the stations before i and i, linear. */
  private double at(int i, double arcMm, ToDoubleFunction<StationFigures> figure) {
    return mix(
        figure.applyAsDouble(stations.get(i - 1)),
        figure.applyAsDouble(stations.get(i)),
        share(i, arcMm));
  }

  private double share(int i, double arcMm) {
    double before = stations.get(i - 1).arcMm();
    return (arcMm - before) / (stations.get(i).arcMm() - before);
  }

  private static double mix(double a, double b, double share) {
    return share == 1 ? b : a + share * (b - a);
  }

  /** The strain of largest magnitude within from and to, with the flat width there. */
  Peak peak(double from, double to) {
    var peak = new Peak(0, 0);
    for (int i = 1; i < stations.size(); i++) {
      double start = Math.max(Math.max(from, fromMm), stations.get(i - 1).arcMm());
      double end = Math.min(Math.min(to, toMm), stations.get(i).arcMm());
      if (end > start) {
        peak = peak.orLarger(peakAt(i, start)).orLarger(peakAt(i, end));
      }
    }
    return peak;
  }

  private Peak peakAt(int i, double arcMm) {
    return new Peak(
        at(i, arcMm, StationFigures::edgeStrain), at(i, arcMm, StationFigures::flatWidthMm));
  }

  /** A strain, and the width of the flange's flat where it is. */
  record Peak(double strain, double flatMm) {

    Peak orLarger(Peak other) {
      return Math.abs(other.strain) >= Math.abs(strain) ? other : this;
    }
  }

  /** A line beside the stretch, from its first to its last point, outward of the mould line. */
  List<Point> line(Contour contour, ToDoubleFunction<StationFigures> outwardMm) {
    var points = new ArrayList<Point>();
    points.add(point(contour, 1, fromMm, outwardMm));
    for (int i = 1; i < stations.size() - 1; i++) {
      double arc = stations.get(i).arcMm();
      if (arc - fromMm > SAME_PLACE_MM && toMm - arc > SAME_PLACE_MM) {
        points.add(offset(contour, i, outwardMm));
      }
    }
    points.add(point(contour, stations.size() - 1, toMm, outwardMm));
    return points;
  }

  private Point point(
      Contour contour, int i, double arcMm, ToDoubleFunction<StationFigures> outwardMm) {
    double share = share(i, arcMm);
    return share == 1
        ? offset(contour, i, outwardMm)
        : offset(contour, i - 1, outwardMm).towards(offset(contour, i, outwardMm), share);
  }

  private Point offset(Contour contour, int i, ToDoubleFunction<StationFigures> outwardMm) {
    return contour.offset(first + i, outwardMm.applyAsDouble(stations.get(i)));
  }
}
