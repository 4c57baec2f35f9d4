package dev.flangewright.overview.demo;

import static dev.flangewright.overview.demo.Ending.accepted;
import static dev.flangewright.overview.demo.Ending.acceptedAfterRework;
import static dev.flangewright.overview.demo.Ending.acceptedAfterSlip;
import static dev.flangewright.overview.demo.Ending.concession;
import static dev.flangewright.overview.demo.Ending.leftAt;
import static dev.flangewright.overview.demo.Ending.leftBefore;
import static dev.flangewright.overview.demo.Ending.scrapped;

import dev.flangewright.bench.RouteStage;
import dev.flangewright.people.Role;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The invented history of the Tidewing: half of the hull, with its losses. */
final class DemoHistory {

  /** The fitter's pieces, oldest first. */
  static final List<Tale> FITTER =
      List.of(
          Tale.of("TW-F07-S1", accepted()),
          Tale.of(
              "TW-F07-S3L",
              scrapped(
                  "first-flange",
                  "folded-ruffle",
                  "Hammered the third ruffle down before it was shrunk; it folded over and cracked"),
              accepted()),
          Tale.of("TW-F07-S3R", accepted()),
          Tale.of("TW-F06-S3L", accepted()),
          Tale.of("TW-F06-S3R", accepted()),
          Tale.of(
              "TW-F06-S1",
              concession(
                  "Inside radius 2.5 mm is drawn close to the table. Faint orange peel along the"
                      + " bend for 120 mm, no crack under the glass; deviation recorded")),
          Tale.of(
              "TW-F08-S1",
              scrapped(
                  "tooling-holes",
                  "hole-off",
                  "Template lay mirrored: forward tooling hole 6 mm off"),
              accepted()),
          Tale.of("TW-F08-S3L", accepted()),
          Tale.of(
              "TW-F08-S3R",
              concession("Tool mark on the web blended out, 0.05 mm deep over 30 mm; recorded")),
          Tale.of(
              "TW-F03-S3L",
              scrapped(
                  "second-flange",
                  "edge-overstrained",
                  "Split 9 mm deep at station 10 in the last pass: H32 does not take this strain")),
          Tale.of(
              "TW-F09-S3L",
              scrapped(
                  "set-to-template",
                  "contour-off",
                  "Came off the block 4 mm open at the upper end and would not stay closed")),
          Tale.of("TW-F04-S3R", leftAt("second-flange")),
          Tale.of("TW-F09-S3R", leftAt("set-to-template")),
          Tale.of(
              "TW-F08-S4",
              scrapped(
                  "first-flange",
                  "folded-ruffle",
                  "Ruffle folded beside the keel, where shrink turns into stretch"),
              leftAt("first-flange")),
          Tale.of("TW-F10-S1", leftAt("first-flange")));

  /** The volunteer's pieces, oldest first. */
  static final List<Tale> VOLUNTEER =
      List.of(
          Tale.of(
              "TW-F07-S2L",
              acceptedAfterSlip("final-trim", "Ticked the wrong piece; this one was not trimmed")),
          Tale.of("TW-F07-S2R", accepted()),
          Tale.of("TW-F06-S2L", accepted()),
          Tale.of("TW-F06-S2R", accepted()),
          Tale.of("TW-F05-S2L", accepted()),
          Tale.of("TW-F05-S2R", accepted()),
          Tale.of("TW-F05-S3L", accepted()),
          Tale.of(
              "TW-F05-S3R",
              scrapped(
                  "second-flange",
                  "edge-not-deburred",
                  "Crack from a shear burr at the lower end; the edge had been re-trimmed and not"
                      + " polished again"),
              accepted()),
          Tale.of("TW-F08-S2L", accepted()),
          Tale.of(
              "TW-F09-S1",
              acceptedAfterRework("set-to-template", "Inner flange 3 degrees open at station 12")),
          Tale.of("TW-F09-S2L", accepted()),
          Tale.of("TW-F09-S2R", accepted()),
          Tale.of("TW-F04-S2L", accepted()),
          Tale.of("TW-F04-S2R", accepted()),
          Tale.of("TW-F08-S2R", accepted()),
          Tale.of("TW-F03-S2L", leftBefore("inspect")),
          Tale.of("TW-F04-S3L", leftBefore("second-flange")),
          Tale.of("TW-F04-S1", leftBefore("cutouts")),
          Tale.of("TW-F10-S2L", leftAt("edges")),
          Tale.of("TW-F10-S2R", leftAt("edges")));

  private DemoHistory() {}

  /** Every entry in the order in which it is said to have happened, the last one before today. */
  static List<Act> acts(List<RouteStage> route, Instant now) {
    return Stream.of(
            new DemoBench(Role.FITTER, route).acts(FITTER, now),
            new DemoBench(Role.VOLUNTEER, route).acts(VOLUNTEER, now))
        .flatMap(List::stream)
        .sorted(Comparator.comparing(Act::at))
        .toList();
  }
}
