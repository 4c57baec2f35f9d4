package dev.flangewright.parts.web;

import dev.flangewright.forming.Corner;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.parts.DrawnContour;
import java.util.List;
import java.util.stream.Collectors;

/** What a drawn path turned out to be, for who has to judge whether it is the right one. */
final class PathSaid {

  private PathSaid() {}

  /**
   * @param chosen the kind chosen on the form
   */
  static String of(DrawnContour drawn, String chosen) {
    FlangeKind found = drawn.contour().kind();
    return "The path is read into the contour: %d stations over %s, %s.%s%s"
        .formatted(
            drawn.contour().stations().size(),
            Figure.mm(drawn.contour().lengthMm(), 1),
            found.label(),
            corners(drawn.corners()),
            kind(found, chosen));
  }

  private static String corners(List<Corner> corners) {
    String stations =
        corners.stream()
            .map(corner -> Integer.toString(corner.stationNumber()))
            .collect(Collectors.joining(", "));
    return stations.isEmpty() ? "" : " Corners at station " + stations + ".";
  }

  private static String kind(FlangeKind found, String chosen) {
    if (found.label().equals(chosen)) {
      return " Nothing is saved yet: look at it, then save the flange.";
    }
    return " The form says "
        + chosen
        + ". If the web lies on the other side of the line, reverse the direction and read the path"
        + " again; else choose "
        + found.label()
        + ".";
  }
}
