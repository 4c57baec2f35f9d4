package dev.flangewright.parts;

import java.util.Arrays;

/** What an edge is gauged with at the bench. */
public enum GaugeKind {
  STRAIGHT_EDGE("straight-edge", "a straight-edge"),
  TEMPLATE("contour template", "the contour template"),
  MICROMETER("micrometer", "a micrometer"),
  ANGLE("angle gauge", "an angle gauge");

  private final String label;
  private final String withWhat;

  GaugeKind(String label, String withWhat) {
    this.label = label;
    this.withWhat = withWhat;
  }

  /** The gauge of that name; the straight-edge for any other word. */
  public static GaugeKind named(String name) {
    return Arrays.stream(values())
        .filter(kind -> kind.name().equals(name))
        .findFirst()
        .orElse(STRAIGHT_EDGE);
  }

  public String label() {
    return label;
  }

  /** As it follows "with". */
  public String withWhat() {
    return withWhat;
  }

  /** Whether it speaks for a stretch between two stations, and not for the zone round one. */
  public boolean isAlongTheEdge() {
    return this == STRAIGHT_EDGE || this == TEMPLATE;
  }
}
