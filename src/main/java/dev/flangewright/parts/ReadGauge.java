package dev.flangewright.parts;

import dev.flangewright.forming.BowGauge;
import dev.flangewright.forming.DemandZone;
import dev.flangewright.forming.EdgeError;
import dev.flangewright.forming.EdgeGauge;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.FormingInput;
import dev.flangewright.forming.GaugedRest;
import dev.flangewright.forming.Sheet;
import dev.flangewright.forming.StationFigures;
import dev.flangewright.forming.TemplateGauge;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;

/** Tells from a gauge reading what is left to do to an edge. Nothing is stored. */
@Service
public class ReadGauge {

  private final FigurePart figure;

  ReadGauge(FigurePart figure) {
    this.figure = figure;
  }

  /**
   * @throws DrawingRefused if something written cannot be taken
   * @throws FormingException if the part cannot be figured or a value is out of its range
   */
  public GaugeReading of(Part part, GaugeEntry written) {
    PartFigures figures = figure.of(part);
    Faults faults = new Faults();
    Optional<PartFigures.OfFlange> flange = flange(figures, written.flange(), faults);
    GaugeKind gauge = gauge(written.gauge(), faults);
    faults.refuseIfAny();
    return gauge.isAlongTheEdge()
        ? along(figures, flange.orElseThrow(), gauge, written)
        : at(figures, flange.orElseThrow(), gauge, written);
  }

  private static GaugeReading along(
      PartFigures figures, PartFigures.OfFlange flange, GaugeKind gauge, GaugeEntry written) {
    Faults faults = new Faults();
    List<StationFigures> stations = flange.working().stations();
    StationFigures first = station("from_station", written.fromStation(), stations, 0, faults);
    StationFigures last =
        station("to_station", written.toStation(), stations, stations.size() - 1, faults);
    if (first.arcMm() >= last.arcMm()) {
      faults.add("to_station", written.toStation(), "it must come after the first station");
    }
    boolean gapAt =
        gauge == GaugeKind.STRAIGHT_EDGE
            ? choice("gap_at", written.gapAt(), "FLANGE_FACE", "OTHER_FACE", faults)
            : choice("gap_at", written.gapAt(), "MIDDLE", "ENDS", faults);
    double gap = faults.number("reading", written.reading(), FormingInput.GAP).value();
    GaugedSection section = GaugedSection.of(figures, flange, first, last, written, faults);
    faults.refuseIfAny();
    double arc = last.arcMm() - first.arcMm();
    double strain =
        gauge == GaugeKind.STRAIGHT_EDGE
            ? bow(section, figures.sheet()).of(gap, section.chordMm()).strain()
            : template(section, figures.sheet()).of(gap, arc).strain();
    EdgeError error =
        gauge == GaugeKind.STRAIGHT_EDGE
            ? EdgeError.byStraightEdge(gapAt)
            : EdgeError.byTemplate(gapAt);
    GaugedRest left =
        GaugedRest.along(
            flange.working(),
            figures.sheet(),
            figures.practice(),
            error,
            strain,
            first.arcMm(),
            last.arcMm(),
            true);
    return new GaugeReading(figures, flange, gauge, first, last, section.webDepthMm(), left);
  }

  private static BowGauge bow(GaugedSection section, Sheet sheet) {
    return new BowGauge(
        section.webDepthMm(),
        sheet.thicknessMm(),
        section.flatWidthMm(),
        section.bendAngleDeg(),
        section.otherFlatWidthMm(),
        section.otherBendAngleDeg());
  }

  private static TemplateGauge template(GaugedSection section, Sheet sheet) {
    return new TemplateGauge(
        section.webDepthMm(),
        sheet.thicknessMm(),
        section.flatWidthMm(),
        section.otherFlatWidthMm());
  }

  private static GaugeReading at(
      PartFigures figures, PartFigures.OfFlange flange, GaugeKind gauge, GaugeEntry written) {
    Faults faults = new Faults();
    List<StationFigures> stations = flange.working().stations();
    StationFigures station = station("station", written.station(), stations, -1, faults);
    FormingInput range =
        gauge == GaugeKind.MICROMETER ? FormingInput.EDGE_THICKNESS : FormingInput.BEND_ANGLE;
    double reading = faults.number("reading", written.reading(), range).value();
    faults.refuseIfAny();
    DemandZone zone = zone(flange, station);
    double length = zone.toMm() - zone.fromMm();
    Sheet sheet = figures.sheet();
    var rest =
        gauge == GaugeKind.MICROMETER
            ? EdgeGauge.restByThickness(station, sheet, reading, length)
            : EdgeGauge.restByAngle(station, sheet, reading, length);
    GaugedRest left =
        GaugedRest.along(
            flange.working(),
            sheet,
            figures.practice(),
            EdgeError.ofUnfinished(station.kind()),
            rest.strain(),
            zone.fromMm(),
            zone.toMm(),
            rest.lowerBound());
    return new GaugeReading(
        figures,
        flange,
        gauge,
        flange.working().nearest(zone.fromMm()),
        flange.working().nearest(zone.toMm()),
        null,
        left);
  }

  private static DemandZone zone(PartFigures.OfFlange flange, StationFigures station) {
    return DemandZone.of(flange.working(), DemandZone.DEFAULT_LENGTH_MM).stream()
        .filter(zone -> station.arcMm() <= zone.toMm() + 1e-9)
        .findFirst()
        .orElseThrow();
  }

  private static StationFigures station(
      String field, String written, List<StationFigures> stations, int otherwise, Faults faults) {
    if (written.isEmpty() && otherwise >= 0) {
      return stations.get(otherwise);
    }
    return stations.stream()
        .filter(station -> Integer.toString(station.number()).equals(written))
        .findFirst()
        .orElseGet(
            () -> {
              faults.add(
                  field,
                  written,
                  "it must be a station of this edge, from %d to %d"
                      .formatted(
                          stations.get(0).number(), stations.get(stations.size() - 1).number()));
              return stations.get(0);
            });
  }

  private static Optional<PartFigures.OfFlange> flange(
      PartFigures figures, String name, Faults faults) {
    Optional<PartFigures.OfFlange> found =
        figures.flanges().stream().filter(one -> one.flange().name().equals(name)).findFirst();
    if (found.isEmpty()) {
      faults.add("flange", name, "the part has no flange of that name with a contour");
    }
    return found;
  }

  private static GaugeKind gauge(String name, Faults faults) {
    return Arrays.stream(GaugeKind.values())
        .filter(kind -> kind.name().equals(name))
        .findFirst()
        .orElseGet(
            () -> {
              faults.add("gauge", name, "it must be one of the gauges in the list");
              return GaugeKind.STRAIGHT_EDGE;
            });
  }

  /** True for the first of two words. */
  private static boolean choice(
      String field, String written, String first, String second, Faults faults) {
    if (!written.equals(first) && !written.equals(second)) {
      faults.add(field, written, "it must be " + first + " or " + second);
    }
    return written.equals(first);
  }
}
