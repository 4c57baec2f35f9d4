package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;

/**
 * The demand of one stretch of a flange, by default 50 mm of mould line, for marking on the edge.
 *
 * <p>FM-ZONE: the edge to gather or gain (FM-SUM) of the zone alone, linear between stations, so
 * that the zones add up to the flange; what is cut out (FM-CUT) counts nothing. Ruffle pitch and
 * height by FM-PITCH at the zone's peak. Derived.
 *
 * @param number from 1
 * @param fromMm along the mould line
 * @param toMm along the mould line; the last zone may be shorter
 * @param gatherMm edge to gather (positive) or gain (negative) in the zone
 * @param peakEdgeStrain strain of largest magnitude, signed, at the zone's ends and stations
 * @param rufflePitchMm half-wave of the ruffle that the edge throws up; 0 where it stretches
 * @param ruffleHeightMm its height if it swallowed all; 0 where it stretches
 */
public record DemandZone(
    int number,
    double fromMm,
    double toMm,
    double gatherMm,
    double peakEdgeStrain,
    double rufflePitchMm,
    double ruffleHeightMm) {

  /** Length of a zone: shop default, no source; about a hand's breadth of mallet work. */
  public static final double DEFAULT_LENGTH_MM = 50;

  /**
   * Cuts a flange into zones.
   *
   * @param lengthMm of a zone, 5 to 1000
   */
  public static List<DemandZone> of(FlangeFigures figures, double lengthMm) {
    FormingInput.ZONE_LENGTH.check(lengthMm);
    var zones = new ArrayList<DemandZone>();
    double total = figures.contourLengthMm();
    int count = (int) Math.max(1, Math.ceil(total / lengthMm - 1e-9));
    for (int i = 0; i < count; i++) {
      double from = i * lengthMm;
      zones.add(zone(figures, i + 1, from, Math.min(total, from + lengthMm)));
    }
    return List.copyOf(zones);
  }

  private static DemandZone zone(FlangeFigures figures, int number, double from, double to) {
    double gather = 0;
    var peak = new EdgePiece.Peak(0, 0);
    for (var piece : figures.pieces()) {
      if (piece.hasMetal()) {
        gather += piece.integral(StationFigures::gatherDensity, from, to);
        peak = peak.orLarger(piece.peak(from, to));
      }
    }
    double pitch = peak.strain() < 0 ? Ruffling.pitchMm(peak.flatMm()) : 0;
    double height = Ruffling.heightMm(peak.strain(), peak.flatMm());
    return new DemandZone(number, from, to, gather, peak.strain(), pitch, height);
  }
}
