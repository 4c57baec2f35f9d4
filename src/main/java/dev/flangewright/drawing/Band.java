package dev.flangewright.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * A segment on the paper: the strip of web between two edges, or one edge alone. Both edges run the
 * same way; the outer one is the longer. Shares run from 0 at one end of the segment to 1.
 */
public final class Band {

  private final Edge outer;
  private final Edge inner;
  private final boolean open;

  private Band(Edge outer, Edge inner, boolean open) {
    this.outer = outer;
    this.inner = inner;
    this.open = open;
  }

  /**
   * From a segment's edges, of which the two longest count.
   *
   * @throws IllegalArgumentException if no edge has two spots
   */
  public static Band between(List<List<Spot>> edges) {
    List<Edge> longest =
        edges.stream()
            .filter(edge -> edge.size() > 1)
            .map(Edge::new)
            .sorted(Comparator.comparingDouble(Edge::length).reversed())
            .limit(2)
            .toList();
    if (longest.isEmpty()) {
      throw new IllegalArgumentException("A segment without an edge cannot be drawn.");
    }
    Edge outer = longest.get(0);
    return longest.size() == 1
        ? new Band(outer, outer, true)
        : new Band(outer, alike(outer, longest.get(1)), false);
  }

  private static Edge alike(Edge outer, Edge inner) {
    double alike = outer.at(0).distance(inner.at(0)) + outer.at(1).distance(inner.at(1));
    double against = outer.at(0).distance(inner.at(1)) + outer.at(1).distance(inner.at(0));
    return alike <= against ? inner : inner.turnedRound();
  }

  /** Whether there is one edge alone. */
  public boolean isOpen() {
    return open;
  }

  /** The whole outline. */
  String outline() {
    return upTo(1);
  }

  /** The outline of the part from the first end to a share. */
  String upTo(double share) {
    List<Spot> way = outer.upTo(share);
    if (open) {
      return Lines.open(way);
    }
    List<Spot> back = new ArrayList<>(inner.upTo(share));
    Collections.reverse(back);
    List<Spot> all = new ArrayList<>(way);
    all.addAll(back);
    return Lines.closed(all);
  }

  public Spot outerAt(double share) {
    return outer.at(share);
  }

  Spot innerAt(double share) {
    return inner.at(share);
  }

  public Spot middleAt(double share) {
    return outerAt(share).towards(innerAt(share), 0.5);
  }

  /** Direction of travel along the outer edge. */
  Spot alongAt(double share) {
    return outer.directionAt(share);
  }

  /** At right angles to the outer edge, away from the inner one; right of travel when open. */
  public Spot outwardAt(double share) {
    Spot right = alongAt(share).turned();
    Spot from = innerAt(share);
    boolean outward = open || from.directionTo(outerAt(share)).dot(right) >= 0;
    return outward ? right : new Spot(-right.x(), -right.y());
  }

  /** From edge to edge at a share. */
  double breadthAt(double share) {
    return outerAt(share).distance(innerAt(share));
  }
}
