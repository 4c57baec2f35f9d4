package dev.flangewright.drawing;

import java.util.List;

/** Path data through spots. */
public final class Lines {

  private Lines() {}

  /** An open line; nothing for less than two spots. */
  public static String open(List<Spot> spots) {
    if (spots.size() < 2) {
      return "";
    }
    StringBuilder d = new StringBuilder();
    for (Spot spot : spots) {
      d.append(d.isEmpty() ? 'M' : 'L')
          .append(Numbers.drawn(spot.x()))
          .append(' ')
          .append(Numbers.drawn(spot.y()));
    }
    return d.toString();
  }

  public static String open(Spot... spots) {
    return open(List.of(spots));
  }

  /** A closed outline; nothing for less than three spots. */
  public static String closed(List<Spot> spots) {
    return spots.size() < 3 ? "" : open(spots) + 'Z';
  }
}
