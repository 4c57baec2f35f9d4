package dev.flangewright.parts;

import dev.flangewright.forming.Contour;
import dev.flangewright.forming.Corner;
import dev.flangewright.forming.FairFit;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.Station;
import dev.flangewright.forming.SvgPath;
import dev.flangewright.forming.SvgPathException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A contour taken from an SVG path, one unit a millimetre.
 *
 * @param contour through stations on the path, in the frame's axes, y up
 * @param corners found in it, in travel order
 */
public record DrawnContour(Contour contour, List<Corner> corners) {

  /**
   * @param path the text of the attribute {@code d}, up to 100 000 characters
   * @param spacingMm largest distance between stations, 0.1 to 10 000 mm
   * @param bendAngleDeg of every station, above 0 and below 165
   * @param widthMm of every station, above 0, up to 500
   * @throws SvgPathException if the path cannot be read, with the place in the text
   * @throws FormingException if its stations make no contour, or a value is out of its range
   */
  public static DrawnContour of(
      String path,
      double spacingMm,
      double bendAngleDeg,
      double widthMm,
      YAxis yAxis,
      boolean reversed) {
    List<Station> read =
        new ArrayList<>(SvgPath.of(path).stations(spacingMm, bendAngleDeg, widthMm));
    if (reversed) {
      Collections.reverse(read);
    }
    List<Station> stations = new ArrayList<>();
    for (Station station : read) {
      double y = yAxis == YAxis.UP ? 0 - station.yMm() : station.yMm();
      stations.add(
          new Station(stations.size() + 1, station.xMm(), y, bendAngleDeg, station.widthMm()));
    }
    FairFit exact = FairFit.of(stations, 0);
    return new DrawnContour(exact.contour(), exact.corners());
  }
}
