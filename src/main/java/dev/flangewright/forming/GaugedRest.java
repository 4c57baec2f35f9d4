package dev.flangewright.forming;

import java.util.List;

/**
 * What a gauge leaves to do along the stretch of edge that it speaks for.
 *
 * <p>FM-ZONE: the millimetres are shared out over the zones of 50 mm by the length of each that was
 * gauged, since a gauge tells one strain for its whole length. FM-PASS tells the passes, at the
 * station in the middle. Derived.
 *
 * @param error which way the edge is off
 * @param rest strain and millimetres over the stretch; none when both are 0
 * @param fromMm where the stretch begins along the mould line
 * @param toMm where it ends
 * @param passes about how many; 0 when nothing is left
 * @param zones that the stretch touches, with what each has of it
 */
public record GaugedRest(
    EdgeError error, Residual rest, double fromMm, double toMm, int passes, List<Zone> zones) {

  /**
   * One zone's share.
   *
   * @param number of the zone, from 1, as {@link DemandZone}
   * @param fromMm where the gauged part of it begins along the mould line
   * @param toMm where that ends
   * @param millimetres still to take out or put in there, a magnitude
   */
  public record Zone(int number, double fromMm, double toMm, double millimetres) {}

  /**
   * Lays a rest along a stretch.
   *
   * @param practice the shop values that tell the passes
   * @param strain its magnitude, natural
   * @param fromMm along the mould line, below {@code toMm}
   * @param lowerBound whether the true rest can only be larger
   */
  public static GaugedRest along(
      FlangeFigures figures,
      Sheet sheet,
      Practice practice,
      EdgeError error,
      double strain,
      double fromMm,
      double toMm,
      boolean lowerBound) {
    var rest = new Residual(strain, strain * (toMm - fromMm), lowerBound);
    var zones =
        DemandZone.of(figures, DemandZone.DEFAULT_LENGTH_MM).stream()
            .filter(zone -> zone.toMm() > fromMm && zone.fromMm() < toMm)
            .map(zone -> share(zone, strain, fromMm, toMm))
            .toList();
    return new GaugedRest(
        error,
        rest,
        fromMm,
        toMm,
        passes(figures.nearest((fromMm + toMm) / 2), sheet, practice, error.signed(strain)),
        zones);
  }

  private static Zone share(DemandZone zone, double strain, double fromMm, double toMm) {
    double from = Math.max(fromMm, zone.fromMm());
    double to = Math.min(toMm, zone.toMm());
    return new Zone(zone.number(), from, to, strain * (to - from));
  }

  private static int passes(StationFigures station, Sheet sheet, Practice practice, double strain) {
    return strain == 0
        ? 0
        : Passes.count(
            strain,
            Passes.strainPerPass(strain, sheet.thicknessMm(), station.flatWidthMm(), practice));
  }
}
