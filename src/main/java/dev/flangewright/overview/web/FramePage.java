package dev.flangewright.overview.web;

import dev.flangewright.overview.FrameDrawing;
import dev.flangewright.overview.HullPart;
import dev.flangewright.overview.StateCounts;
import dev.flangewright.parts.Frame;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One frame as its page shows it.
 *
 * @param positionMm as written in the register
 * @param drawing SVG; empty without contours
 * @param before code of the next frame towards the datum; null at the first
 * @param after code of the next frame away from it; null at the last
 */
record FramePage(
    String code,
    String positionMm,
    String answer,
    String drawing,
    List<RiskLine> parts,
    @Nullable String before,
    @Nullable String after) {

  /**
   * @param here the parts of the frame
   * @param codes of all frames, along the hull
   */
  static FramePage of(Frame frame, List<HullPart> here, List<String> codes, String linkPrefix) {
    int at = codes.indexOf(frame.code());
    return new FramePage(
        frame.code(),
        frame.positionMm().text(),
        answer(here),
        FrameDrawing.of("frame", linkPrefix, here.stream().map(HullPart::segment).toList()),
        here.stream().map(RiskLine::of).toList(),
        at > 0 ? codes.get(at - 1) : null,
        at >= 0 && at + 1 < codes.size() ? codes.get(at + 1) : null);
  }

  private static String answer(List<HullPart> here) {
    return here.isEmpty()
        ? "It has no segments yet."
        : Sentences.howFar(
            StateCounts.of(here.stream().map(part -> part.progress().state()).toList()));
  }
}
