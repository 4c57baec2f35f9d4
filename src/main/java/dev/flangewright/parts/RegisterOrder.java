package dev.flangewright.parts;

import java.util.Comparator;

/** The orders in which the register can be read. */
public enum RegisterOrder {
  FRAME("frame, then part number", byFrame()),
  NUMBER("part number", byNumber()),
  RISK("risk, highest first", Comparator.comparingDouble(RegisterLine::utilisation).reversed()),
  STRAIN(
      "edge strain, largest first",
      Comparator.comparingDouble(RegisterLine::largestStrain).reversed()),
  STATE(
      "state, least done first",
      Comparator.<RegisterLine, PartState>comparing(line -> line.progress().state())
          .thenComparing(line -> line.progress().done()));

  private final String words;
  private final Comparator<RegisterLine> lines;

  RegisterOrder(String words, Comparator<RegisterLine> lines) {
    this.words = words;
    this.lines = lines;
  }

  public String words() {
    return words;
  }

  /** Lines that this order leaves equal stand by frame and number. */
  Comparator<RegisterLine> lines() {
    return lines.thenComparing(byFrame());
  }

  private static Comparator<RegisterLine> byNumber() {
    return Comparator.comparing(line -> line.part().partNumber());
  }

  private static Comparator<RegisterLine> byFrame() {
    return Comparator.<RegisterLine>comparingDouble(line -> line.part().framePositionMm().value())
        .thenComparing(line -> line.part().frame())
        .thenComparing(byNumber());
  }
}
