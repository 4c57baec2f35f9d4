package dev.flangewright.parts;

import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;

/** An extract of a flange's forming figures, and its contour thinned out for small drawings. */
@Embeddable
public class FlangeSummary {

  private @Nullable Double peakEdgeStrain;
  private @Nullable Integer peakStation;
  private @Nullable Double gatherMm;
  private @Nullable Double contourLengthMm;
  private @Nullable Double ruffleRatio;
  private @Nullable Double splitUtilisation;
  private @Nullable Integer passes;
  private String sketch = "";

  protected FlangeSummary() {}

  void failed() {
    peakEdgeStrain = gatherMm = contourLengthMm = ruffleRatio = splitUtilisation = null;
    peakStation = passes = null;
  }

  void demand(double peakStrain, int atStation, double gatherMillimetres, double lengthMm) {
    peakEdgeStrain = peakStrain;
    peakStation = atStation;
    gatherMm = gatherMillimetres;
    contourLengthMm = lengthMm;
  }

  void limits(@Nullable Double ruffle, @Nullable Double split, @Nullable Integer inPasses) {
    ruffleRatio = ruffle;
    splitUtilisation = split;
    passes = inPasses;
  }

  void sketchedAs(String points) {
    sketch = points;
  }

  public @Nullable Double peakEdgeStrain() {
    return peakEdgeStrain;
  }

  public @Nullable Integer peakStation() {
    return peakStation;
  }

  public @Nullable Double gatherMm() {
    return gatherMm;
  }

  public @Nullable Double contourLengthMm() {
    return contourLengthMm;
  }

  public @Nullable Double ruffleRatio() {
    return ruffleRatio;
  }

  public @Nullable Double splitUtilisation() {
    return splitUtilisation;
  }

  public @Nullable Integer passes() {
    return passes;
  }

  /** The contour thinned out: {@code x,y x,y …} in mm, y up; empty without a contour. */
  public String sketch() {
    return sketch;
  }
}
