package dev.flangewright.forming;

import static dev.flangewright.forming.FormingException.Reason.CONTOUR_CROSSES_ITSELF;
import static dev.flangewright.forming.FormingException.Reason.STATIONS_COINCIDE;
import static dev.flangewright.forming.FormingException.Reason.STATION_NUMBERS;
import static dev.flangewright.forming.FormingException.Reason.TOO_FEW_STATIONS;
import static dev.flangewright.forming.FormingException.Reason.TOO_MANY_STATIONS;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/** What a list of stations must be before it is a contour; each rule refuses with its station. */
final class ContourCheck {

  private static final Range COUNT = Range.fromTo(2, 2000);
  private static final Range APART = Range.atLeast(0.01);

  private ContourCheck() {}

  static void check(List<Station> stations, List<Point> points) {
    enough(stations);
    numbersRise(stations);
    neighboursApart(stations, points);
    doesNotCross(stations, points);
  }

  /** What digitised stations must be before a fit; the fit is checked as a whole afterwards. */
  static void checkAsRead(List<Station> stations) {
    enough(stations);
    numbersRise(stations);
    neighboursApart(stations, stations.stream().map(Station::point).toList());
  }

  private static void enough(List<Station> stations) {
    count(stations.size());
  }

  static void count(double stations) {
    if (!COUNT.contains(stations)) {
      var reason = stations < 2 ? TOO_FEW_STATIONS : TOO_MANY_STATIONS;
      throw FormingException.of(reason, "stations", stations, COUNT);
    }
  }

  private static void numbersRise(List<Station> stations) {
    for (int i = 1; i < stations.size(); i++) {
      int before = stations.get(i - 1).number();
      int number = stations.get(i).number();
      if (number <= before) {
        throw FormingException.of(STATION_NUMBERS, "station", (double) number, Range.above(before))
            .at(number);
      }
    }
  }

  private static void neighboursApart(List<Station> stations, List<Point> points) {
    for (int i = 1; i < points.size(); i++) {
      double distance = points.get(i - 1).distanceMm(points.get(i));
      if (!APART.contains(distance)) {
        throw FormingException.of(STATIONS_COINCIDE, "distanceMm", distance, APART)
            .at(stations.get(i).number());
      }
    }
  }

  private static void doesNotCross(List<Station> stations, List<Point> points) {
    var line =
        new GeometryFactory()
            .createLineString(
                points.stream()
                    .map(p -> new Coordinate(p.xMm(), p.yMm()))
                    .toArray(Coordinate[]::new));
    var simple = new IsSimpleOp(line);
    if (!simple.isSimple()) {
      var crossing = simple.getNonSimpleLocation();
      int nearest = nearest(points, new Point(crossing.x, crossing.y));
      throw FormingException.of(CONTOUR_CROSSES_ITSELF, "stations", null, null)
          .at(stations.get(nearest).number());
    }
  }

  private static int nearest(List<Point> points, Point place) {
    int nearest = 0;
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).distanceMm(place) < points.get(nearest).distanceMm(place)) {
        nearest = i;
      }
    }
    return nearest;
  }
}
