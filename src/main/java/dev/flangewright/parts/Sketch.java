package dev.flangewright.parts;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Thins a contour out for small drawings: nowhere further off than 0.2 % of its length. */
final class Sketch {

  private static final double SHARE_OF_LENGTH = 0.002;
  private static final int MOST_POINTS = 60;

  private Sketch() {}

  static String of(WrittenStations stations) {
    List<WrittenStation> list = stations.list();
    if (list.size() < 2) {
      return "";
    }
    Coordinate[] line =
        list.stream()
            .map(s -> new Coordinate(s.xMm().value(), s.yMm().value()))
            .toArray(Coordinate[]::new);
    var whole = new GeometryFactory().createLineString(line);
    double offBy = whole.getLength() * SHARE_OF_LENGTH;
    Coordinate[] thin = DouglasPeuckerSimplifier.simplify(whole, offBy).getCoordinates();
    while (thin.length > MOST_POINTS) {
      offBy *= 2;
      thin = DouglasPeuckerSimplifier.simplify(whole, offBy).getCoordinates();
    }
    return List.of(thin).stream()
        .map(c -> String.format(Locale.ROOT, "%.1f,%.1f", c.x, c.y))
        .collect(Collectors.joining(" "));
  }
}
