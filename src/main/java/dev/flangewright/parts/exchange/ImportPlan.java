package dev.flangewright.parts.exchange;

import java.util.List;

/**
 * What an import would do. Lists hold the first entries only; the counts beside them are whole.
 *
 * @param register rows of register.csv, one a flange
 * @param contours flanges of contours.csv
 * @param newParts part numbers
 * @param notices what to know though it keeps nothing from being imported
 * @param fingerprint the same for the same effect on the same build
 */
public record ImportPlan(
    Counts register,
    Counts contours,
    int newPartCount,
    List<String> newParts,
    int changeCount,
    List<Change> changes,
    int problemCount,
    List<Problem> problems,
    List<String> notices,
    String fingerprint) {

  /** True if nothing can be imported until the problems are gone. */
  public boolean isRefused() {
    return problemCount > 0;
  }

  /** True if the build already holds all that the files say. */
  public boolean changesNothing() {
    return newPartCount == 0
        && changeCount == 0
        && register.added() + register.changed() + contours.added() + contours.changed() == 0;
  }
}
