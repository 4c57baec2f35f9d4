package dev.flangewright.overview.demo;

import dev.flangewright.parts.CutoutEntry;
import dev.flangewright.parts.HoleEntry;
import dev.flangewright.parts.LayoutEntry;
import java.util.List;

/** One part of the demo with holes in its web and the way for a stringer; invented. */
final class DemoLayout {

  static final String PART = "TW-F02-S2L";

  /** Three tooling holes that fit one way only, two lightening holes, one cutout. */
  static final LayoutEntry ENTRY =
      new LayoutEntry(
          "0",
          List.of(
              new HoleEntry("T1", "TOOLING", "-388.0", "300.0", "5.0"),
              new HoleEntry("T2", "TOOLING", "-378.0", "-200.0", "5.0"),
              new HoleEntry("T3", "TOOLING", "-420.0", "25.0", "5.0"),
              new HoleEntry("L1", "LIGHTENING", "-416.0", "120.0", "32.0"),
              new HoleEntry("L2", "LIGHTENING", "-416.0", "-80.0", "32.0")),
          List.of(new CutoutEntry("outer", "330.0", "370.0", "34.0")));

  private DemoLayout() {}
}
