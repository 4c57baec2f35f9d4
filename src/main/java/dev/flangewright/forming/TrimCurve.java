package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The demand of a flange against the width it carries, from the finished width to the working one.
 *
 * <p>FM-TRIM: every station is computed by FM-DEV at the smaller of its own width and the width
 * asked for; the strain of largest magnitude is the demand. What trimming saves before a pass is
 * the difference to the working width. Derived. Neglected: metal that was already formed at the
 * larger width keeps what it got.
 *
 * @param points from the finished width up to the working width
 */
public record TrimCurve(List<At> points) {

  /** Widths computed: smooth to the eye, cheap. */
  private static final int STEPS = 12;

  /**
   * Demand at one width.
   *
   * @param widthMm carried while forming
   * @param peakEdgeStrain strain of largest magnitude, signed
   */
  public record At(double widthMm, double peakEdgeStrain) {}

  /**
   * Computes the curve.
   *
   * @param finishedWidthMm of the flange, above 0
   * @throws FormingException when the finished width is shorter than the bend
   */
  public static TrimCurve of(Contour contour, Sheet sheet, double finishedWidthMm) {
    FormingInput.FLANGE_WIDTH.check(finishedWidthMm);
    double working = contour.stations().stream().mapToDouble(Station::widthMm).max().orElseThrow();
    var points = new ArrayList<At>();
    double from = Math.min(finishedWidthMm, working);
    for (int i = 0; i <= STEPS; i++) {
      double width = from + (working - from) * i / STEPS;
      points.add(new At(width, peak(contour, sheet, width)));
    }
    return new TrimCurve(List.copyOf(points));
  }

  public At finished() {
    return points.get(0);
  }

  public At working() {
    return points.get(points.size() - 1);
  }

  /** Strain that the edge is spared when the flange is trimmed first, a magnitude. */
  public double savedStrain() {
    return Math.abs(working().peakEdgeStrain()) - Math.abs(finished().peakEdgeStrain());
  }

  private static double peak(Contour contour, Sheet sheet, double widthMm) {
    var strains = new ArrayList<Double>();
    for (int i = 0; i < contour.stations().size(); i++) {
      var station = contour.stations().get(i);
      double width = Math.min(widthMm, station.widthMm());
      try {
        strains.add(
            FlangeSection.of(
                    contour.kindAt(i), contour.radiusMm(i), sheet, width, station.bendAngleDeg())
                .edgeStrain());
      } catch (FormingException refusal) {
        throw refusal.at(station.number());
      }
    }
    return strains.stream().max(Comparator.comparingDouble(Math::abs)).orElseThrow();
  }
}
