package dev.flangewright.parts;

import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;

/**
 * An extract of a part's forming figures, stored so that lists and the overview need not compute
 * them. Absent figures are null: the problem, or the missing material value, says why.
 */
@Embeddable
public class PartSummary {

  private int figuresVersion;
  private @Nullable String figuresProblem;
  private @Nullable Double blankAreaMm2;
  private @Nullable Double blankLengthMm;
  private @Nullable Double blankBreadthMm;
  private @Nullable Double blankMassKg;
  private @Nullable String riskMode;
  private @Nullable String riskLevel;
  private @Nullable Double riskUtilisation;

  protected PartSummary() {}

  /** Forgets everything and notes why there are no figures. */
  void failed(int version, String problem) {
    figuresVersion = version;
    figuresProblem = problem.length() > 500 ? problem.substring(0, 500) : problem;
    blankAreaMm2 = blankLengthMm = blankBreadthMm = blankMassKg = riskUtilisation = null;
    riskMode = riskLevel = null;
  }

  void blank(
      int version,
      @Nullable String problem,
      @Nullable Double areaMm2,
      double lengthMm,
      double breadthMm,
      @Nullable Double kg) {
    figuresVersion = version;
    figuresProblem = problem;
    blankAreaMm2 = areaMm2;
    blankLengthMm = lengthMm;
    blankBreadthMm = breadthMm;
    blankMassKg = kg;
  }

  void risk(@Nullable String mode, @Nullable String level, @Nullable Double utilisation) {
    riskMode = mode;
    riskLevel = level;
    riskUtilisation = utilisation;
  }

  public int figuresVersion() {
    return figuresVersion;
  }

  public @Nullable String figuresProblem() {
    return figuresProblem;
  }

  public @Nullable Double blankAreaMm2() {
    return blankAreaMm2;
  }

  public @Nullable Double blankLengthMm() {
    return blankLengthMm;
  }

  public @Nullable Double blankBreadthMm() {
    return blankBreadthMm;
  }

  public @Nullable Double blankMassKg() {
    return blankMassKg;
  }

  public @Nullable String riskMode() {
    return riskMode;
  }

  public @Nullable String riskLevel() {
    return riskLevel;
  }

  public @Nullable Double riskUtilisation() {
    return riskUtilisation;
  }
}
