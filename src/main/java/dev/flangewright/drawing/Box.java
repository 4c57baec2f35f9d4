package dev.flangewright.drawing;

import java.util.Collection;

/** An upright rectangle. */
public record Box(double minX, double minY, double maxX, double maxY) {

  /** From the origin. */
  public static Box of(double width, double height) {
    return new Box(0, 0, width, height);
  }

  /**
   * The smallest box around all spots.
   *
   * @throws IllegalArgumentException if there are none
   */
  public static Box around(Collection<Spot> spots) {
    if (spots.isEmpty()) {
      throw new IllegalArgumentException("Nothing to draw a box around.");
    }
    var xs = spots.stream().mapToDouble(Spot::x).summaryStatistics();
    var ys = spots.stream().mapToDouble(Spot::y).summaryStatistics();
    return new Box(xs.getMin(), ys.getMin(), xs.getMax(), ys.getMax());
  }

  /** This box with a margin on every side. */
  public Box grown(double margin) {
    return new Box(minX - margin, minY - margin, maxX + margin, maxY + margin);
  }

  public double width() {
    return maxX - minX;
  }

  public double height() {
    return maxY - minY;
  }

  public Spot centre() {
    return new Spot((minX + maxX) / 2, (minY + maxY) / 2);
  }
}
