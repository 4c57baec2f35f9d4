package dev.flangewright.parts.web;

import dev.flangewright.parts.Written;
import dev.flangewright.parts.WrittenCutout;
import dev.flangewright.parts.WrittenCutouts;
import java.util.List;

/** Says what is cut out of a flange. */
final class CutoutWords {

  private CutoutWords() {}

  static List<String> of(WrittenCutouts cutouts) {
    return cutouts.list().stream().map(CutoutWords::of).toList();
  }

  private static String of(WrittenCutout cutout) {
    Written depth = cutout.depthMm();
    return "from %s to %s mm, %s"
        .formatted(
            cutout.fromMm(),
            cutout.toMm(),
            depth == null ? "through the bend" : depth + " mm deep from the finished edge");
  }
}
