package dev.flangewright.parts.web;

import dev.flangewright.forming.DemandZone;

/**
 * A zone of a flange's edge as the part sheet lists it.
 *
 * @param way what to do with the edge length, perhaps nothing
 * @param pitch of a ruffle, or that there is none
 */
record ZoneRow(Figure along, Figure move, String way, Figure peak, Figure pitch, Figure height) {

  private static final Figure NONE = Figure.words("none");

  static ZoneRow of(DemandZone zone) {
    boolean ruffles = zone.rufflePitchMm() > 0;
    return new ZoneRow(
        new Figure(
            Figure.mm(zone.fromMm(), 0).text() + " to " + Figure.mm(zone.toMm(), 0).text(), "mm"),
        Figure.mm(Math.abs(zone.gatherMm()), 2),
        zone.gatherMm() > 0 ? "gather" : zone.gatherMm() < 0 ? "gain" : "",
        Figure.percent(zone.peakEdgeStrain(), 2),
        ruffles ? Figure.mm(zone.rufflePitchMm(), 0) : NONE,
        ruffles ? Figure.mm(zone.ruffleHeightMm(), 1) : NONE);
  }
}
