package dev.flangewright.overview.web;

import dev.flangewright.drawing.ProgressBars;
import dev.flangewright.drawing.ProgressBars.Row;
import dev.flangewright.drawing.ProgressBars.Share;
import dev.flangewright.drawing.SegmentState;
import dev.flangewright.overview.Overview.FrameProgress;
import dev.flangewright.overview.Overview.StageProgress;
import dev.flangewright.overview.StateCounts;
import java.util.List;

/** Draws progress by stage and by frame. */
final class Bars {

  private Bars() {}

  static String ofStages(List<StageProgress> stages) {
    return ProgressBars.of(
        "progress-by-stage", "Segments past each stage", stages.stream().map(Bars::row).toList());
  }

  static String ofFrames(List<FrameProgress> frames) {
    return ProgressBars.of(
        "progress-by-frame", "Segments by frame", frames.stream().map(Bars::row).toList());
  }

  private static Row row(StageProgress stage) {
    int notThere = Math.max(0, stage.total() - stage.done() - stage.begun() - stage.held());
    return new Row(
        stage.name(),
        stage.done() + " of " + stage.total() + " past it",
        List.of(
            new Share(SegmentState.ACCEPTED, stage.done(), "past it"),
            new Share(SegmentState.IN_WORK, stage.begun(), "being worked on"),
            new Share(SegmentState.HELD, stage.held(), "held at it"),
            new Share(SegmentState.NOT_BEGUN, notThere, "not there yet")));
  }

  private static Row row(FrameProgress frame) {
    StateCounts parts = frame.parts();
    return new Row(
        frame.code(),
        parts.done() + " of " + parts.total() + " accepted",
        List.of(
            new Share(SegmentState.ACCEPTED, parts.accepted(), "accepted"),
            new Share(SegmentState.CONCESSION, parts.concession(), "with a concession"),
            new Share(SegmentState.IN_WORK, parts.inWork(), "in work"),
            new Share(SegmentState.HELD, parts.held(), "held"),
            new Share(SegmentState.NOT_BEGUN, parts.notBegun(), "not begun")));
  }
}
