package dev.flangewright.blocks.web;

import dev.flangewright.blocks.Block;
import dev.flangewright.blocks.BlockChange;
import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.people.LogTime;
import dev.flangewright.photos.Gallery;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A block on the page of its set.
 *
 * @param buttons what may be done at a touch
 * @param withWords what may be done with a reason
 * @param log newest first
 * @param photos of the block
 */
record BlockView(
    long id,
    long version,
    String name,
    BlockCondition condition,
    String material,
    String place,
    List<ActionButton> buttons,
    List<ActionButton> withWords,
    List<LogLine> log,
    Gallery photos) {

  /** Who brought it into which condition. */
  record LogLine(String when, String said, String why) {

    static LogLine of(BlockChange change, Instant now) {
      return new LogLine(
          LogTime.of(change.doneAt(), now),
          change.who() + ": " + change.became().word(),
          change.why());
    }
  }

  static BlockView of(Block block, Gallery photos, Instant now) {
    List<LogLine> log =
        new ArrayList<>(block.changes().stream().map(change -> LogLine.of(change, now)).toList());
    Collections.reverse(log);
    String name = block.name();
    return new BlockView(
        block.id(),
        block.version(),
        Character.toUpperCase(name.charAt(0)) + name.substring(1),
        block.condition(),
        block.facts().material(),
        block.facts().place(),
        ActionButton.on(block.condition(), false),
        ActionButton.on(block.condition(), true),
        log,
        photos);
  }

  public LogLine latest() {
    return log.get(0);
  }
}
