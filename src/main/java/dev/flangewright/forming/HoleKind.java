package dev.flangewright.forming;

/** What a hole in the web is for. */
public enum HoleKind {
  /** Locates the blank on the block by a tool pin. */
  TOOLING("tooling"),
  /** Takes weight out of the web. */
  LIGHTENING("lightening"),
  /** Drilled small, opened for its rivet on assembly. */
  RIVET_PILOT("rivet pilot");

  private final String label;

  HoleKind(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }
}
