package dev.flangewright.parts.web;

import dev.flangewright.parts.PartFigures;
import dev.flangewright.parts.drawing.TrimGraph;
import org.jspecify.annotations.Nullable;

/**
 * What trimming to the finished width before forming would spare the edge.
 *
 * @param graph trusted SVG of the strain against the width carried
 */
record TrimView(String sentence, String graph) {

  /** Null where trimming first changes nothing that can be read. */
  static @Nullable TrimView of(PartFigures part, PartFigures.OfFlange figured) {
    String now = strain(figured.working().peakEdgeStrain());
    String then = strain(figured.finished().peakEdgeStrain());
    return now.equals(then)
        ? null
        : new TrimView(
            "Trimmed to %s mm first, the edge needs %s instead of %s."
                .formatted(figured.flange().drawn().finishedWidthMm(), then, now),
            TrimGraph.of("trim-" + figured.flange().id(), part.part().partNumber(), part, figured));
  }

  private static String strain(double edgeStrain) {
    return Figure.percent(Math.abs(edgeStrain), 1).toString();
  }
}
