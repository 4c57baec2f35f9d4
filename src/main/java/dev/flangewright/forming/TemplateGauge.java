package dev.flangewright.forming;

/**
 * What the gap between the web's contour and its template says about an edge that is still too long
 * or too short.
 *
 * <pre>
 * FM-TEMPLATE Δκ = 8c/L² = (e·b·t/2)·(x_f − x̄)/I_w
 *             so  e = 16c·I_w / (L²·b·t·(x_f − x̄))
 * c gap in the middle of a length L of the template (mm), e residual strain at the edge, b flat
 * width (mm), t thickness (mm), x_f the flange's place and x̄ the centroid in the web's plane (mm),
 * I_w second moment of the section about the axis at right angles to the web (mm⁴)
 * </pre>
 *
 * <p>A flange that is too long by a strain that falls linearly to its root pulls the web round in
 * its own plane: derived, elastic beam theory. Valid for gaps small against L. Neglected:
 * springback of the web, the bend's own radius, and ruffles, so the answer is a lower bound. A wide
 * web hardly moves: a gap then means that the block or the blank is off, not the flange.
 *
 * @param webDepthMm depth of the web between the flanges, above 0
 * @param thicknessMm t
 * @param flatWidthMm b of the flange that is gauged, above 0
 * @param otherFlatWidthMm b of the flange at the web's other edge; 0 without one
 */
public record TemplateGauge(
    double webDepthMm, double thicknessMm, double flatWidthMm, double otherFlatWidthMm) {

  public TemplateGauge {
    FormingInput.WEB_DEPTH.check(webDepthMm);
    FormingInput.THICKNESS.check(thicknessMm);
    FormingInput.FLANGE_WIDTH.check(flatWidthMm);
    FormingInput.OTHER_FLAT_WIDTH.check(otherFlatWidthMm);
  }

  /** The rest that a gap c over a length L of the template shows. */
  public Residual of(double gapMm, double spanMm) {
    FormingInput.GAP.check(gapMm);
    FormingInput.SPAN.check(spanMm);
    double bow = 8 * gapMm / (spanMm * spanMm);
    double strain = bow / bendPerStrain();
    return new Residual(strain, strain * spanMm, true);
  }

  /** Δκ/e, 1/mm. */
  double bendPerStrain() {
    double area = webDepthMm + flatWidthMm + otherFlatWidthMm;
    double centroid = (flatWidthMm - otherFlatWidthMm) * webDepthMm / 2 / area;
    double toFlange = webDepthMm / 2 - centroid;
    double toOther = webDepthMm / 2 + centroid;
    double secondMoment =
        webDepthMm * (webDepthMm * webDepthMm / 12 + centroid * centroid)
            + flatWidthMm * toFlange * toFlange
            + otherFlatWidthMm * toOther * toOther;
    return flatWidthMm / 2 * toFlange / secondMoment;
  }
}
