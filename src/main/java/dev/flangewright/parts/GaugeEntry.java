package dev.flangewright.parts;

import java.util.Objects;

/**
 * A gauge reading as somebody wrote it, before it is checked. What a gauge does not need stays
 * empty.
 *
 * @param gauge the name of a {@link GaugeKind}
 * @param station the station that a micrometer or an angle was read at
 * @param fromStation where a straight-edge or template begins; empty for the first station
 * @param toStation where it ends; empty for the last
 * @param gapAt straight-edge: FLANGE_FACE or OTHER_FACE, the face on which the gap shows in the
 *     middle; template: MIDDLE or ENDS
 * @param webDepthMm between the flanges; empty to take it from the drawing's two contours
 * @param otherFlange UP when the web's other flange is turned already, FLAT when not
 * @param widthMm of the flange as it stands, to the mould line; empty for the working width
 * @param reading gap in mm, edge thickness in mm, or bend angle from flat in degrees
 */
public record GaugeEntry(
    String flange,
    String gauge,
    String station,
    String fromStation,
    String toStation,
    String gapAt,
    String webDepthMm,
    String otherFlange,
    String widthMm,
    String reading) {

  /** A field that was not sent at all counts as empty. */
  public GaugeEntry {
    flange = Objects.requireNonNullElse(flange, "");
    gauge = Objects.requireNonNullElse(gauge, "");
    station = Objects.requireNonNullElse(station, "");
    fromStation = Objects.requireNonNullElse(fromStation, "");
    toStation = Objects.requireNonNullElse(toStation, "");
    gapAt = Objects.requireNonNullElse(gapAt, "");
    webDepthMm = Objects.requireNonNullElse(webDepthMm, "");
    otherFlange = Objects.requireNonNullElse(otherFlange, "");
    widthMm = Objects.requireNonNullElse(widthMm, "");
    reading = Objects.requireNonNullElse(reading, "");
  }

  /** With the part's first edge and the straight-edge where nobody has chosen yet. */
  public GaugeEntry on(Part part) {
    String first = part.flanges().isEmpty() ? "" : part.flanges().get(0).name();
    return new GaugeEntry(
        flange.isEmpty() ? first : flange,
        GaugeKind.named(gauge).name(),
        station,
        fromStation,
        toStation,
        gapAt,
        webDepthMm,
        otherFlange,
        widthMm,
        reading);
  }
}
