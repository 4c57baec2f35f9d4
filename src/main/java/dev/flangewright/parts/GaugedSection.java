package dev.flangewright.parts;

import dev.flangewright.forming.FormingInput;
import dev.flangewright.forming.Point;
import dev.flangewright.forming.StationFigures;
import java.util.Optional;

/**
 * The part's section in the middle of the stretch that is gauged, mm and degrees from flat.
 *
 * @param webDepthMm between the mould lines, unless somebody measured it; a flange that is still
 *     flat counts to the web
 * @param chordMm straight from the first station to the last
 */
record GaugedSection(
    double webDepthMm,
    double flatWidthMm,
    double bendAngleDeg,
    double otherFlatWidthMm,
    double otherBendAngleDeg,
    double chordMm) {

  static GaugedSection of(
      PartFigures figures,
      PartFigures.OfFlange flange,
      StationFigures first,
      StationFigures last,
      GaugeEntry written,
      Faults faults) {
    StationFigures here = flange.working().nearest((first.arcMm() + last.arcMm()) / 2);
    Point middle = point(flange, here);
    Optional<Facing> facing = Facing.of(figures, flange, middle);
    boolean flat = written.otherFlange().equals("FLAT");
    double width =
        written.widthMm().isEmpty()
            ? here.flangeWidthMm()
            : faults.number("width_mm", written.widthMm(), FormingInput.FLANGE_WIDTH).value();
    double depth = depth(written, facing, flat, faults);
    return new GaugedSection(
        depth,
        width - here.setbackMm(),
        here.bendAngleDeg(),
        flat ? 0 : facing.map(other -> other.station().flatWidthMm()).orElse(0.0),
        flat ? 0 : facing.map(other -> other.station().bendAngleDeg()).orElse(0.0),
        point(flange, first).distanceMm(point(flange, last)));
  }

  private static double depth(
      GaugeEntry written, Optional<Facing> facing, boolean flat, Faults faults) {
    if (!written.webDepthMm().isEmpty()) {
      return faults.number("web_depth_mm", written.webDepthMm(), FormingInput.WEB_DEPTH).value();
    }
    if (facing.isEmpty()) {
      faults.add(
          "web_depth_mm",
          "",
          "it must be given, since the drawing has no second contour to tell it");
      return 1;
    }
    Facing other = facing.get();
    return other.distanceMm() + (flat ? other.station().blankBeyondMouldLineMm() : 0);
  }

  /** The station of the part's other edges that lies nearest across the web. */
  private record Facing(StationFigures station, double distanceMm) {

    static Optional<Facing> of(PartFigures figures, PartFigures.OfFlange gauged, Point middle) {
      return figures.flanges().stream()
          .filter(flange -> !flange.flange().name().equals(gauged.flange().name()))
          .flatMap(
              flange ->
                  flange.working().stations().stream()
                      .map(s -> new Facing(s, point(flange, s).distanceMm(middle))))
          .min((a, b) -> Double.compare(a.distanceMm, b.distanceMm));
    }
  }

  private static Point point(PartFigures.OfFlange flange, StationFigures station) {
    return flange.contour().points().get(flange.working().stations().indexOf(station));
  }
}
