package dev.flangewright.bench;

import dev.flangewright.parts.GaugeEntry;
import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;

/** A gauge reading as it was written, column by column. */
@Embeddable
class GaugeNote {

  private String flange;
  private String gauge;

  @Column(name = "at_station")
  private String station;

  private String fromStation;
  private String toStation;
  private String gapAt;
  private String webDepthMm;
  private String otherFlange;
  private String widthMm;
  private String reading;

  protected GaugeNote() {}

  GaugeNote(GaugeEntry written) {
    this.flange = written.flange();
    this.gauge = written.gauge();
    this.station = written.station();
    this.fromStation = written.fromStation();
    this.toStation = written.toStation();
    this.gapAt = written.gapAt();
    this.webDepthMm = written.webDepthMm();
    this.otherFlange = written.otherFlange();
    this.widthMm = written.widthMm();
    this.reading = written.reading();
  }

  GaugeEntry written() {
    return new GaugeEntry(
        flange,
        gauge,
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
