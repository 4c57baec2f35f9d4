package dev.flangewright.photos;

/** In which sizes a photo is kept. */
public enum PhotoSize {
  FULL(2048),
  SMALL(400);

  private final int longSidePx;

  PhotoSize(int longSidePx) {
    this.longSidePx = longSidePx;
  }

  /** The longer side has at most as many pixels. */
  int longSidePx() {
    return longSidePx;
  }
}
