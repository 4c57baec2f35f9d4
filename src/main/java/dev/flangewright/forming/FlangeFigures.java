package dev.flangewright.forming;

import java.util.Comparator;
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
 * contour. Derived. Cutouts by FM-CUT, {@link Cutout}: sums over the metal that is left, peaks over
 * the stations that {@link #formed()} counts.
 *
 * @param stations one for every station of the contour, in its order; where a cutout takes the
 *     flange away, as if it were there
 * @param pieces the flange between its cutouts and under them, in order; one where nothing is cut
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
    List<EdgePiece> pieces,
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
    return of(contour, sheet, metal, edge, List.of());
  }

  /**
   * The figures of a flange with cutouts, by the default shop values.
   *
   * @throws FormingException as {@link #of(Contour, Sheet, MetalValues, EdgeCondition, List,
   *     Practice)}
   */
  public static FlangeFigures of(
      Contour contour, Sheet sheet, MetalValues metal, EdgeCondition edge, List<Cutout> cutouts) {
    return of(contour, sheet, metal, edge, cutouts, Practice.DEFAULT);
  }

  /**
   * The figures of a flange with cutouts, by a workshop's own values.
   *
   * @throws FormingException naming the station, when a section cannot be made; or when the cutouts
   *     overlap, reach beyond the contour, end in the bend or leave nothing
   */
  public static FlangeFigures of(
      Contour contour,
      Sheet sheet,
      MetalValues metal,
      EdgeCondition edge,
      List<Cutout> cutouts,
      Practice practice) {
    var flangeMetal = FlangeMetal.of(sheet, metal, edge, practice);
    var whole =
        IntStream.range(0, contour.stations().size())
            .mapToObj(i -> StationFigures.of(contour, i, flangeMetal))
            .toList();
    var pieces =
        EdgePiece.of(
            whole, cutouts, (i, atMostMm) -> StationFigures.of(contour, i, flangeMetal, atMostMm));
    var stations = hardest(whole, pieces);
    var formed = formed(stations, pieces);
    var peak = peak(formed);
    double takeOut = overMetal(pieces, s -> Math.max(0, s.gatherDensity()));
    double putIn = overMetal(pieces, s -> Math.max(0, -s.gatherDensity()));
    return new FlangeFigures(
        stations,
        pieces,
        contour.kind(),
        contour.lengthMm(),
        pieces.stream().mapToDouble(p -> p.integral(StationFigures::tangentPerMouldLine)).sum(),
        peak.edgeStrain(),
        peak.number(),
        takeOut - putIn,
        takeOut,
        putIn,
        formed.stream().mapToDouble(StationFigures::edgeThicknessMm).min().getAsDouble(),
        formed.stream().mapToDouble(StationFigures::ruffleRatio).max().getAsDouble(),
        peakSplit(formed),
        formed.stream().mapToInt(StationFigures::passes).max().getAsInt(),
        BendRadiusCheck.of(sheet, metal),
        flangeMetal.blockRadiusMm());
  }

  /** The stations that stand on metal, or just beyond an end of it and stand for that end. */
  public List<StationFigures> formed() {
    return formed(stations, pieces);
  }

  /** Whether a cutout takes the flange away at the i-th station, from 0, and on both sides. */
  public boolean isCutAway(int i) {
    return pieces.stream().noneMatch(piece -> piece.hasMetal() && piece.counts(i));
  }

  /** Length of the mould line along which a flange is left, mm. */
  public double formedLengthMm() {
    return overMetal(pieces, station -> 1);
  }

  /** The station nearest to a place along the mould line, mm from the first. */
  public StationFigures nearest(double arcMm) {
    return stations.stream()
        .min(Comparator.comparingDouble(station -> Math.abs(station.arcMm() - arcMm)))
        .orElseThrow();
  }

  private static double overMetal(
      List<EdgePiece> pieces, ToDoubleFunction<StationFigures> density) {
    return pieces.stream()
        .filter(EdgePiece::hasMetal)
        .mapToDouble(piece -> piece.integral(density))
        .sum();
  }

  /** A station that two pieces count has the figures of the one that asks more of the edge. */
  private static List<StationFigures> hardest(List<StationFigures> whole, List<EdgePiece> pieces) {
    if (pieces.size() == 1) {
      return pieces.get(0).stations();
    }
    return IntStream.range(0, whole.size())
        .mapToObj(
            i ->
                pieces.stream()
                    .filter(piece -> piece.hasMetal() && piece.counts(i))
                    .map(piece -> piece.stations().get(i - piece.first()))
                    .max(Comparator.comparingDouble(StationFigures::flangeWidthMm))
                    .orElse(whole.get(i)))
        .toList();
  }

  private static List<StationFigures> formed(
      List<StationFigures> stations, List<EdgePiece> pieces) {
    if (pieces.size() == 1) {
      return stations;
    }
    return IntStream.range(0, stations.size())
        .filter(i -> pieces.stream().anyMatch(piece -> piece.hasMetal() && piece.counts(i)))
        .mapToObj(stations::get)
        .toList();
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
