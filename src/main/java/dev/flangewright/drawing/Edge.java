package dev.flangewright.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A line through spots, walked by shares of its length. */
final class Edge {

  private final List<Spot> spots;
  private final double[] lengths;

  Edge(List<Spot> spots) {
    this.spots = spots;
    this.lengths = new double[spots.size()];
    for (int i = 1; i < spots.size(); i++) {
      lengths[i] = lengths[i - 1] + spots.get(i - 1).distance(spots.get(i));
    }
  }

  Edge turnedRound() {
    List<Spot> back = new ArrayList<>(spots);
    Collections.reverse(back);
    return new Edge(back);
  }

  double length() {
    return lengths[lengths.length - 1];
  }

  Spot at(double share) {
    int i = legAt(share);
    double leg = lengths[i + 1] - lengths[i];
    double along = share * length() - lengths[i];
    return spots.get(i).towards(spots.get(i + 1), leg == 0 ? 0 : along / leg);
  }

  Spot directionAt(double share) {
    int i = legAt(share);
    return spots.get(i).directionTo(spots.get(i + 1));
  }

  /** The spots from the beginning to a share, the last one on the line. */
  List<Spot> upTo(double share) {
    List<Spot> way = new ArrayList<>(spots.subList(0, legAt(share) + 1));
    way.add(at(share));
    return way;
  }

  private int legAt(double share) {
    double wanted = share * length();
    int i = 0;
    while (i < lengths.length - 2 && lengths[i + 1] < wanted) {
      i++;
    }
    return i;
  }
}
