package dev.flangewright.parts;

/** Which way y grows in a drawn path; in a frame it grows upwards. */
public enum YAxis {
  /** As SVG has it: the contour stands as one sees it drawn. */
  DOWN("downwards, as in SVG: the contour stands as it is seen"),
  /** The numbers are a frame's own. */
  UP("upwards: the numbers of the path are the frame's own");

  private final String words;

  YAxis(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
