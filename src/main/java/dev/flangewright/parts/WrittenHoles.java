package dev.flangewright.parts;

import java.util.List;
import java.util.stream.Collectors;

/**
 * All holes of one part, kept as one text of a line a hole: they are read and replaced whole, and
 * their numbers must come back as they were written.
 */
public record WrittenHoles(String lines) {

  public static final WrittenHoles NONE = new WrittenHoles("");

  public static WrittenHoles of(List<WrittenHole> holes) {
    return new WrittenHoles(
        holes.stream().map(WrittenHole::line).collect(Collectors.joining("\n")));
  }

  public List<WrittenHole> list() {
    return lines.lines().map(WrittenHole::ofLine).toList();
  }
}
