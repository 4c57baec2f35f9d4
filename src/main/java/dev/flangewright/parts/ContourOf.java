package dev.flangewright.parts;

import dev.flangewright.forming.Contour;
import dev.flangewright.forming.FairFit;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.Station;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Turns written stations into a contour that can be calculated with: through them where they are
 * exact, else the fair curve that comes as near as the flange's tolerance asks.
 */
public final class ContourOf {

  private ContourOf() {}

  /**
   * At the working width: a station's own width where it has one, else the flange's.
   *
   * @throws FormingException if the stations make no contour, or no fair one within the tolerance
   */
  public static Contour atWorkingWidth(WrittenStations stations, FlangeDrawing drawn) {
    return drawn.toleranceMm() == 0
        ? Contour.of(read(stations, drawn))
        : fit(stations, drawn).contour();
  }

  /**
   * Trimmed to the finished width: nowhere wider than that.
   *
   * @throws FormingException as {@link #atWorkingWidth}
   */
  public static Contour atFinishedWidth(WrittenStations stations, FlangeDrawing drawn) {
    return atWorkingWidth(stations, drawn).trimmedTo(drawn.finishedWidthMm().value());
  }

  /**
   * The contour at the working width, and how well the stations agree with it.
   *
   * @throws FormingException as {@link #atWorkingWidth}
   */
  public static FairFit fit(WrittenStations stations, FlangeDrawing drawn) {
    return LastFits.of(read(stations, drawn), drawn.toleranceMm());
  }

  private static List<Station> read(WrittenStations stations, FlangeDrawing drawn) {
    double flangeWidthMm = drawn.workingWidthMm().value();
    return stations.list().stream()
        .map(
            s ->
                new Station(
                    s.number(),
                    s.xMm().value(),
                    s.yMm().value(),
                    s.bendAngleDeg().value(),
                    width(s.widthMm(), flangeWidthMm)))
        .toList();
  }

  private static double width(@Nullable Written own, double flangeWidthMm) {
    return own == null ? flangeWidthMm : own.value();
  }
}
