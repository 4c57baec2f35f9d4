package dev.flangewright.parts;

import java.util.List;
import java.util.stream.Collectors;

/**
 * All cutouts of one flange, kept as one text of a line a cutout: they are read and replaced whole,
 * and their numbers must come back as they were written.
 */
public record WrittenCutouts(String lines) {

  public static final WrittenCutouts NONE = new WrittenCutouts("");

  public static WrittenCutouts of(List<WrittenCutout> cutouts) {
    return new WrittenCutouts(
        cutouts.stream().map(WrittenCutout::line).collect(Collectors.joining("\n")));
  }

  public List<WrittenCutout> list() {
    return lines.lines().map(WrittenCutout::ofLine).toList();
  }
}
