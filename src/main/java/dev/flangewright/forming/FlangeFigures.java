package dev.flangewright.forming;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The figures of a whole flange: station by station, and summed along it.
 *
 * <pre>
 * FM-SUM  dℓ = (1 − κ·SB)·ds      gather = ∫ (r0 − r)/Rb dℓ
 * ds along the mould line (mm), κ signed curvature (1/mm), SB setback (mm), the rest as FM-GATHER
 * </pre>
 *
 * <p>Summed by the trapezoid rule over the stations; exact on a circle with one angle and width.
 * Neglected: the small extra length of the tangent line where the setback changes along the
 * contour. Derived.
 *
 * @param stations one for every station of the contour, in its order
 * @param kind of the whole contour
 * @param contourLengthMm mould line
 * @param tangentLengthMm tangent line
 * @param peakEdgeStrain the strain of largest magnitude, signed
 * @param peakStation the number of the first station that has it
 * @param gatherMm edge to gather (positive) or to gain (negative) over the whole flange
 * @param takeOutMm the shrinking runs' part of it, never negative
 * @param putInMm the stretching runs' part of it, never negative: gatherMm = takeOutMm − putInMm
 * @param thinnestEdgeMm smallest edge thickness after forming
 * @param peakRuffleRatio largest ruffle ratio
 * @param peakSplitUtilisation largest split utilisation; null when unknown
 * @param passes of the station that needs most
 * @param bendRadius the bend-radius check; null when unknown
 * @param blockRadiusMm radius of the block that allows for springback; null when unknown
 */
public record FlangeFigures(
    List<StationFigures> stations,
    FlangeKind kind,
    double contourLengthMm,
    double tangentLengthMm,
    double peakEdgeStrain,
    int peakStation,
    double gatherMm,
    double takeOutMm,
    double putInMm,
    double thinnestEdgeMm,
    double peakRuffleRatio,
    @Nullable Double peakSplitUtilisation,
    int passes,
    @Nullable BendRadiusCheck bendRadius,
    @Nullable Double blockRadiusMm) {

  /**
   * The figures by the default shop values.
   *
   * @throws FormingException naming the station, when a section cannot be made
   */
  public static FlangeFigures of(
      Contour contour, Sheet sheet, MetalValues metal, EdgeCondition edge) {
    return of(contour, sheet, metal, edge, Practice.DEFAULT);
  }

  /**
   * The figures by a workshop's own values.
   *
   * @throws FormingException naming the station, when a section cannot be made
   */
  public static FlangeFigures of(
      Contour contour, Sheet sheet, MetalValues metal, EdgeCondition edge, Practice practice) {
    var flangeMetal = FlangeMetal.of(sheet, metal, edge, practice);
    var stations =
        IntStream.range(0, contour.stations().size())
            .mapToObj(i -> StationFigures.of(contour, i, flangeMetal))
            .toList();
    var peak = peak(stations);
    double takeOut = alongMouldLine(stations, s -> Math.max(0, s.gatherDensity()));
    double putIn = alongMouldLine(stations, s -> Math.max(0, -s.gatherDensity()));
    return new FlangeFigures(
        stations,
        contour.kind(),
        contour.lengthMm(),
        alongMouldLine(stations, StationFigures::tangentPerMouldLine),
        peak.edgeStrain(),
        peak.number(),
        takeOut - putIn,
        takeOut,
        putIn,
        stations.stream().mapToDouble(StationFigures::edgeThicknessMm).min().getAsDouble(),
        stations.stream().mapToDouble(StationFigures::ruffleRatio).max().getAsDouble(),
        peakSplit(stations),
        stations.stream().mapToInt(StationFigures::passes).max().getAsInt(),
        BendRadiusCheck.of(sheet, metal),
        flangeMetal.blockRadiusMm());
  }

  private static double alongMouldLine(
      List<StationFigures> stations, ToDoubleFunction<StationFigures> density) {
    double sum = 0;
    for (int i = 1; i < stations.size(); i++) {
      var before = stations.get(i - 1);
      var here = stations.get(i);
      double mean = (density.applyAsDouble(before) + density.applyAsDouble(here)) / 2;
      sum += mean * (here.arcMm() - before.arcMm());
    }
    return sum;
  }

  /**
   * Stations that share the peak to six figures count as equal, so that rounding does not choose.
   */
  private static StationFigures peak(List<StationFigures> stations) {
    double largest =
        stations.stream().mapToDouble(s -> Math.abs(s.edgeStrain())).max().getAsDouble();
    return stations.stream()
        .filter(s -> Math.abs(s.edgeStrain()) >= largest * (1 - 1e-6))
        .findFirst()
        .get();
  }

  private static @Nullable Double peakSplit(List<StationFigures> stations) {
    double peak = 0;
    for (var station : stations) {
      var utilisation = station.splitUtilisation();
      if (utilisation == null) {
        return null;
      }
      peak = Math.max(peak, utilisation);
    }
    return peak;
  }
}
