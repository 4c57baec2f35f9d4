package dev.flangewright.bench.web;

import dev.flangewright.bench.Hours;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.people.LogTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A stage in the list of a piece.
 *
 * @param glyph of its state; the word stands beside it
 * @param current true for the stage that is to be done now
 */
record StageLine(
    String name, String glyph, String word, boolean current, boolean hold, String said) {

  static StageLine of(PieceStage stage, boolean current, Instant now) {
    return new StageLine(
        stage.name(),
        glyph(stage),
        word(stage, current),
        current,
        stage.isHoldPoint(),
        said(stage, now));
  }

  private static String glyph(PieceStage stage) {
    if (stage.isFinished()) {
      return "tick";
    }
    return stage.isHeld() ? "bar" : "";
  }

  private static String word(PieceStage stage, boolean current) {
    if (stage.isFinished()) {
      return "done";
    }
    if (stage.isStarted()) {
      return stage.isHeld() ? "held" : "begun";
    }
    return current ? "next" : "to do";
  }

  private static String said(PieceStage stage, Instant now) {
    List<String> facts = new ArrayList<>();
    if (stage.isFinished()) {
      facts.add("by " + by(stage.finishedBy(), stage.finishedAt(), now));
    } else if (stage.isStarted()) {
      facts.add("by " + by(stage.startedBy(), stage.startedAt(), now));
    }
    if (stage.checkedAt() != null) {
      facts.add("checked by " + by(stage.checkedBy(), stage.checkedAt(), now));
    }
    Double hours = stage.hours();
    if (hours != null) {
      facts.add(Hours.inWords(hours));
    }
    return String.join(", ", facts);
  }

  private static String by(@Nullable String who, @Nullable Instant at, Instant now) {
    return at == null ? "" + who : who + " " + LogTime.of(at, now);
  }
}
