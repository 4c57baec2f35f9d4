package dev.flangewright.forming;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The bevel of the form block's edge, station by station, as the saw table is tilted for it.
 *
 * <p>FM-BLOCK gives the block angle, which allows for springback; a saw table set square cuts 90°,
 * so tilt = θ_block − 90°. Positive: the block's edge leans in under its face, as for a flange that
 * is turned more than square (a closed bevel); negative: it leans out (an open bevel). Derived. A
 * hand-formed flange opens more than FM-BLOCK says: prove the block on a trial piece.
 *
 * @param rows one for every station, in its order
 */
public record BevelTable(List<Row> rows) {

  private static final double SQUARE_DEG = 90;

  /**
   * One station.
   *
   * @param station number as in the file
   * @param arcMm along the mould line from the first station
   * @param bendAngleDeg of the finished flange, from flat
   * @param blockAngleDeg of the block, from its face; null when springback is unknown
   * @param tiltDeg of the saw table from square; null when springback is unknown
   */
  public record Row(
      int station,
      double arcMm,
      double bendAngleDeg,
      @Nullable Double blockAngleDeg,
      @Nullable Double tiltDeg) {

    static Row of(StationFigures station) {
      var block = station.blockAngleDeg();
      return new Row(
          station.number(),
          station.arcMm(),
          station.bendAngleDeg(),
          block,
          block == null ? null : block - SQUARE_DEG);
    }
  }

  public static BevelTable of(FlangeFigures figures) {
    return new BevelTable(figures.stations().stream().map(Row::of).toList());
  }
}
