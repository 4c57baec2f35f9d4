package dev.flangewright.forming;

/** How near a utilisation is to its limit; the bounds are a shop default, no source. */
public enum RiskLevel {
  LOW("low"),
  MODERATE("moderate"),
  HIGH("high"),
  BEYOND("beyond the limit");

  private final String label;

  RiskLevel(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }

  /** LOW below 0.6, MODERATE below 0.85, HIGH up to 1, BEYOND above. */
  public static RiskLevel of(double utilisation) {
    if (utilisation < 0.6) {
      return LOW;
    }
    if (utilisation < 0.85) {
      return MODERATE;
    }
    return utilisation <= 1 ? HIGH : BEYOND;
  }
}
