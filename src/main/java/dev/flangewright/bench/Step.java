package dev.flangewright.bench;

/** One place earlier or later in an order. */
public enum Step {
  EARLIER(-1),
  LATER(1);

  private final int places;

  Step(int places) {
    this.places = places;
  }

  int places() {
    return places;
  }
}
