package dev.flangewright.parts;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * The stations of a flange that is bent further or carried wider than it is drawn: every bend angle
 * turns by the same degrees, so that the taper stays, and a width that a station has of its own
 * grows by as much as the flange's. Decimal arithmetic: no digits are made up.
 */
record Otherwise(Written turnDeg, Written drawnWidthMm, Written supposedWidthMm) {

  WrittenStations of(WrittenStations drawn) {
    return WrittenStations.of(drawn.list().stream().map(this::of).toList());
  }

  private WrittenStation of(WrittenStation station) {
    Written own = station.widthMm();
    return new WrittenStation(
        station.number(),
        station.xMm(),
        station.yMm(),
        sum(station.bendAngleDeg(), decimal(turnDeg)),
        own == null ? null : wider(own));
  }

  private @Nullable Written wider(Written own) {
    return sum(own, decimal(supposedWidthMm).subtract(decimal(drawnWidthMm)));
  }

  private static Written sum(Written written, BigDecimal more) {
    return new Written(decimal(written).add(more).toPlainString());
  }

  private static BigDecimal decimal(Written written) {
    return new BigDecimal(written.text());
  }
}
