package dev.flangewright.parts.exchange;

import dev.flangewright.parts.WrittenStation;
import dev.flangewright.parts.WrittenStations;
import java.util.Arrays;
import java.util.List;

/** The stations that a file gives for one flange, kept as text: a file may hold very many. */
final class ContourInFile {

  private final int place;
  private String text = "";
  private int[] lines = {};
  private int lastStation = -1;
  private boolean bad;

  /**
   * @param place among the contours of the file, from 0
   */
  ContourInFile(int place) {
    this.place = place;
  }

  void add(List<WrittenStation> stations, int[] onLines) {
    String more = WrittenStations.of(stations).lines();
    text = text.isEmpty() ? more : text + "\n" + more;
    int before = lines.length;
    lines = Arrays.copyOf(lines, before + onLines.length);
    System.arraycopy(onLines, 0, lines, before, onLines.length);
  }

  void reached(int station) {
    lastStation = station;
  }

  void isBad() {
    bad = true;
  }

  /** True if one of its rows is refused, so that the whole makes no sense. */
  boolean bad() {
    return bad;
  }

  int place() {
    return place;
  }

  int lastStation() {
    return lastStation;
  }

  WrittenStations stations() {
    return new WrittenStations(text);
  }

  int count() {
    return lines.length;
  }

  int firstLine() {
    return lines[0];
  }

  int lastLine() {
    return lines[lines.length - 1];
  }

  /** The line of the i-th station, from 0. */
  int line(int i) {
    return lines[i];
  }
}
