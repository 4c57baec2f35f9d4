package dev.flangewright.parts;

import dev.flangewright.forming.Contour;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.Station;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Turns written stations into a contour that can be calculated with. */
public final class ContourOf {

  private ContourOf() {}

  /**
   * At the working width: a station's own width where it has one, else the flange's.
   *
   * @throws FormingException if the stations make no contour
   */
  public static Contour atWorkingWidth(WrittenStations stations, FlangeDrawing drawn) {
    return of(stations, drawn.workingWidthMm().value(), Double.POSITIVE_INFINITY);
  }

  /**
   * Trimmed to the finished width: nowhere wider than that.
   *
   * @throws FormingException if the stations make no contour
   */
  public static Contour atFinishedWidth(WrittenStations stations, FlangeDrawing drawn) {
    double finished = drawn.finishedWidthMm().value();
    return of(stations, finished, finished);
  }

  private static Contour of(WrittenStations stations, double flangeWidthMm, double atMostMm) {
    List<Station> list =
        stations.list().stream()
            .map(
                s ->
                    new Station(
                        s.number(),
                        s.xMm().value(),
                        s.yMm().value(),
                        s.bendAngleDeg().value(),
                        Math.min(atMostMm, width(s.widthMm(), flangeWidthMm))))
            .toList();
    return Contour.of(list);
  }

  private static double width(@Nullable Written own, double flangeWidthMm) {
    return own == null ? flangeWidthMm : own.value();
  }
}
