package dev.flangewright.parts;

/** Which way y grows in a drawn path; in a frame it grows upwards. */
public enum YAxis {
  /** As SVG has it: the contour stands as one sees it drawn. */
  DOWN("downwards, as in SVG"),
  /** The numbers are a frame's own. */
  UP("upwards, as in the frame");

  private final String words;

  YAxis(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
