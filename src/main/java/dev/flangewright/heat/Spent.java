package dev.flangewright.heat;

/**
 * Minutes since the quench that count, as the clock went on.
 *
 * @param before until it first came into the freezer
 * @param inside in a freezer that did not stop the clock
 * @param after out of the freezer again
 */
public record Spent(double before, double inside, double after) {

  static final Spent NOTHING = new Spent(0, 0, 0);

  public double total() {
    return before + inside + after;
  }

  Spent outside(double minutes, boolean hasBeenInside) {
    return hasBeenInside
        ? new Spent(before, inside, after + minutes)
        : new Spent(before + minutes, inside, after);
  }

  Spent insideToo(double minutes) {
    return new Spent(before, inside + minutes, after);
  }
}
