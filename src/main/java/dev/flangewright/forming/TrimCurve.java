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
    var figures = FlangeFigures.of(contour, sheet, MetalValues.UNKNOWN, EdgeCondition.POLISHED);
    return of(figures, sheet, finishedWidthMm);
  }

  /**
   * The curve of a flange as figured at its working width, its cutouts left out.
   *
   * @param finishedWidthMm of the flange, above 0
   * @throws FormingException when the finished width is shorter than the bend
   */
  public static TrimCurve of(FlangeFigures figures, Sheet sheet, double finishedWidthMm) {
    FormingInput.FLANGE_WIDTH.check(finishedWidthMm);
    double working =
        figures.formed().stream().mapToDouble(StationFigures::flangeWidthMm).max().orElseThrow();
    var points = new ArrayList<At>();
    double from = Math.min(finishedWidthMm, working);
    for (int i = 0; i <= STEPS; i++) {
      double width = from + (working - from) * i / STEPS;
      points.add(new At(width, peak(figures.formed(), sheet, width)));
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

  private static double peak(List<StationFigures> stations, Sheet sheet, double widthMm) {
    return stations.stream()
        .map(station -> strain(station, sheet, Math.min(widthMm, station.flangeWidthMm())))
        .max(Comparator.comparingDouble(Math::abs))
        .orElseThrow();
  }

  private static double strain(StationFigures station, Sheet sheet, double widthMm) {
    try {
      return FlangeSection.of(
              station.kind(), station.radiusMm(), sheet, widthMm, station.bendAngleDeg())
          .edgeStrain();
    } catch (FormingException refusal) {
      throw refusal.at(station.number());
    }
  }
}
