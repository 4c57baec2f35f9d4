package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The contour split into runs of one kind.
 *
 * <p>FM-RUN: neighbouring stations whose curvature has the same sign make a run. Its sagitta is the
 * largest distance of its stations from the chord that joins the station before it to the station
 * after it (at the ends of the contour its own end stations). Below 0.1 mm the run counts as
 * straight, and its curvature as zero; straight runs in a row are one. 0.1 mm is a shop default, no
 * source: well above the rounding of a loft table, well below what a template shows. Neglected: a
 * bend that slight over a whole run, whose edge strain is below 8·0.1·W/L² for a run of length L.
 */
final class RunSplit {

  private static final double STRAIGHT_SAGITTA_MM = 0.1;

  private record Span(FlangeKind kind, int first, int last) {}

  private final List<Span> spans;
  private final FlangeKind[] kinds;

  private RunSplit(List<Span> spans, int stations) {
    this.spans = spans;
    this.kinds = new FlangeKind[stations];
    for (var span : spans) {
      Arrays.fill(kinds, span.first, span.last + 1, span.kind);
    }
  }

  static RunSplit of(List<Point> points, Curvature curvature) {
    var spans = new ArrayList<Span>();
    int n = points.size();
    int first = 0;
    for (int i = 1; i <= n; i++) {
      if (i == n
          || FlangeKind.ofCurvature(curvature.perMm(i))
              != FlangeKind.ofCurvature(curvature.perMm(first))) {
        var kind = FlangeKind.ofCurvature(curvature.perMm(first));
        boolean straight = sagitta(points, first, i - 1) < STRAIGHT_SAGITTA_MM;
        append(spans, new Span(straight ? FlangeKind.PLAIN : kind, first, i - 1));
        first = i;
      }
    }
    return new RunSplit(spans, n);
  }

  private static void append(List<Span> spans, Span next) {
    int last = spans.size() - 1;
    if (last >= 0 && spans.get(last).kind == next.kind) {
      spans.set(last, new Span(next.kind, spans.get(last).first, next.last));
    } else {
      spans.add(next);
    }
  }

  private static double sagitta(List<Point> points, int first, int last) {
    var from = points.get(Math.max(0, first - 1));
    var to = points.get(Math.min(points.size() - 1, last + 1));
    double largest = 0;
    for (int i = first; i <= last; i++) {
      largest = Math.max(largest, Math.abs(points.get(i).leftOf(from, to)));
    }
    return largest;
  }

  FlangeKind kindAt(int i) {
    return kinds[i];
  }

  FlangeKind kind() {
    boolean shrinks = spans.stream().anyMatch(span -> span.kind == FlangeKind.SHRINK);
    boolean stretches = spans.stream().anyMatch(span -> span.kind == FlangeKind.STRETCH);
    if (shrinks && stretches) {
      return FlangeKind.MIXED;
    }
    return shrinks ? FlangeKind.SHRINK : stretches ? FlangeKind.STRETCH : FlangeKind.PLAIN;
  }

  List<ContourRun> runs(Contour contour) {
    return spans.stream().map(span -> run(contour, span)).toList();
  }

  private static ContourRun run(Contour contour, Span span) {
    double tightest = Double.POSITIVE_INFINITY;
    for (int i = span.first; i <= span.last; i++) {
      tightest = Math.min(tightest, contour.radiusMm(i));
    }
    var stations = contour.stations();
    return new ContourRun(
        span.kind, stations.get(span.first).number(), stations.get(span.last).number(), tightest);
  }
}
