package dev.flangewright.forming;

/** The ways a flange is lost on the bench. */
public enum RiskMode {
  SPLIT("split at the edge"),
  BEND_RADIUS("crack in the bend"),
  RUFFLE("fold from a ruffle");

  private final String label;

  RiskMode(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }
}
