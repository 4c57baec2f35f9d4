package dev.flangewright.forming;

/**
 * The short key of every formula, as it stands in the class comments and in {@code docs/method.md}.
 */
public enum Formula {
  SETBACK("FM-SB", "Setback"),
  BEND_ALLOWANCE("FM-BA", "Bend allowance"),
  STRAIGHT_BLANK("FM-BLANK", "Blank of a straight flange"),
  DEVELOPMENT("FM-DEV", "Blank and edge strain of a curved flange"),
  EDGE_THICKNESS("FM-THICK", "Edge thickness"),
  GATHER("FM-GATHER", "Edge to gather or to gain per metre"),
  ARC_LENGTH("FM-ARC", "Arc length from stations"),
  CURVATURE("FM-CURV", "Curvature from stations"),
  FIT("FM-FIT", "Fair curve through digitised stations"),
  CORNERS("FM-CORNER", "Corners"),
  CURVATURE_BAND("FM-BAND", "Confidence band of the curvature"),
  RUNS("FM-RUN", "Shrinking, stretching and straight runs"),
  SUMS("FM-SUM", "Edge to gather or to gain over a flange"),
  CUTOUT("FM-CUT", "Cutouts through a flange"),
  RUFFLE("FM-RUFFLE", "Ruffle ratio"),
  RUFFLE_PITCH("FM-PITCH", "Ruffle pitch and height"),
  SPLIT("FM-SPLIT", "Split limit"),
  SPRINGBACK("FM-SPRING", "Springback"),
  BLOCK_ANGLE("FM-BLOCK", "Block angle"),
  BEND_RADIUS("FM-RMIN", "Smallest bend radius"),
  PASSES("FM-PASS", "Passes"),
  RISK("FM-RISK", "Governing failure mode"),
  OUTLINE("FM-OUT", "Developed outline"),
  ALLOWANCE("FM-ALLOWANCE", "Blank with trim allowance"),
  HOLES("FM-HOLE", "Holes in the web"),
  MASS("FM-MASS", "Mass of the blank"),
  ZONE("FM-ZONE", "Demand zone by zone"),
  TRIM("FM-TRIM", "Demand against the width carried"),
  PLAN("FM-PLAN", "Passes, stops and softening"),
  GRAIN("FM-GRAIN", "Direction of the grain"),
  BOW("FM-BOW", "Gap under a straight-edge"),
  TEMPLATE("FM-TEMPLATE", "Gap at the contour template"),
  MICRO("FM-MICRO", "Strain from the edge's thickness"),
  ANGLE("FM-ANGLE", "Strain from the angle reached");

  private final String key;
  private final String title;

  Formula(String key, String title) {
    this.key = key;
    this.title = title;
  }

  public String key() {
    return key;
  }

  public String title() {
    return title;
  }
}
