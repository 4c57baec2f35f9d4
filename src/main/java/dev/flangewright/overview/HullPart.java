package dev.flangewright.overview;

import dev.flangewright.drawing.SegmentState;
import dev.flangewright.parts.PartProgress.Progress;
import dev.flangewright.parts.RegisterPart;
import java.util.List;

/**
 * A part as the overview reads it.
 *
 * @param sketches the thinned-out contour of each flange, empty where there is none
 */
public record HullPart(RegisterPart part, Progress progress, List<String> sketches) {

  int flanges() {
    return sketches.size();
  }

  /** As it stands in a drawing. */
  public HullSegment segment() {
    return new HullSegment(
        part.id(),
        part.partNumber(),
        part.frame(),
        part.framePositionMm().value(),
        sketches.stream().map(HullSegment::edge).toList(),
        SegmentState.valueOf(progress.state().name()),
        progress.total() == 0 ? 0 : (double) progress.done() / progress.total(),
        progress.words());
  }
}
