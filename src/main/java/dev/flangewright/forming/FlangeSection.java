package dev.flangewright.forming;

import static dev.flangewright.forming.FormingException.Reason.FLANGE_WIDER_THAN_CONTOUR;

import org.jspecify.annotations.Nullable;

/**
 * One section through a flange: what the blank needs there and what the edge has to do.
 *
 * <pre>
 * FM-DEV    Rb = Rm ∓ SB (− shrink, + stretch), then {@link EdgeDevelopment}
 * FM-THICK  t_edge = t·exp(−ε/(1 + R))
 * FM-GATHER gather = (r0 − r)/Rb·1000   mm of edge to take out per metre of tangent line
 * Rm mould-line radius (mm), SB setback (mm), ε edge strain, R normal anisotropy, r and r0 formed
 * and blank radius of the edge (mm)
 * </pre>
 *
 * <p>FM-THICK is volume constancy with the width strain −R/(1+R)·ε: derived. A plain section has
 * infinite radii, no strain and no gather, and its blank is the straight one.
 *
 * @param kind SHRINK, STRETCH or PLAIN
 * @param setbackMm SB, mould line to tangent line
 * @param bendAllowanceMm BA
 * @param straightBlankMm BA + W − SB, what a straight flange would need
 * @param tangentRadiusMm Rb, radius of the web's tangent line; infinite when plain
 * @param blankBeyondTangentMm |r0 − Rb|, blank beyond the tangent line
 * @param formedEdgeRadiusMm r; infinite when plain
 * @param blankEdgeRadiusMm r0; infinite when plain
 * @param edgeStrain ε, natural, negative where the edge must shrink
 * @param edgeThicknessMm thickness of the free edge after forming
 * @param gatherMmPerMetre edge to gather (positive) or to gain (negative), mm per m of tangent line
 */
public record FlangeSection(
    FlangeKind kind,
    double setbackMm,
    double bendAllowanceMm,
    double straightBlankMm,
    double tangentRadiusMm,
    double blankBeyondTangentMm,
    double formedEdgeRadiusMm,
    double blankEdgeRadiusMm,
    double edgeStrain,
    double edgeThicknessMm,
    double gatherMmPerMetre) {

  /**
   * @param contourRadiusMm Rm of the outer mould line, above 0; ignored when plain
   * @param flangeWidthMm W to the outer mould line, up to 500 mm
   * @param bendAngleDeg θ from flat, above 0 and below 165 degrees
   * @throws FormingException when an input is not a number or out of range, the flange is shorter
   *     than its bend or wider than its contour allows, or the kind is MIXED
   */
  public static FlangeSection of(
      FlangeKind kind,
      double contourRadiusMm,
      Sheet sheet,
      double flangeWidthMm,
      double bendAngleDeg) {
    return switch (kind) {
      case PLAIN -> plain(sheet, StraightBend.of(sheet, flangeWidthMm, bendAngleDeg));
      case SHRINK -> curved(kind, +1, contourRadiusMm, sheet, flangeWidthMm, bendAngleDeg);
      case STRETCH -> curved(kind, -1, contourRadiusMm, sheet, flangeWidthMm, bendAngleDeg);
      case MIXED ->
          throw FormingException.of(
              FormingException.Reason.KIND_NEEDS_STATIONS, "kind", null, null);
    };
  }

  private static FlangeSection plain(Sheet sheet, StraightBend bend) {
    double infinite = Double.POSITIVE_INFINITY;
    double blank = bend.straightBlankMm();
    var edge = new EdgeDevelopment(blank, infinite, infinite, 0, 0);
    return from(FlangeKind.PLAIN, sheet, bend, infinite, edge);
  }

  private static FlangeSection curved(
      FlangeKind kind, int side, double radius, Sheet sheet, double width, double bendAngleDeg) {
    FormingInput.CONTOUR_RADIUS.check(radius);
    var bend = StraightBend.of(sheet, width, bendAngleDeg);
    double tangentRadius = radius - side * bend.setbackMm();
    if (tangentRadius <= 0) {
      throw tooTight(radius, Range.above(bend.setbackMm()));
    }
    double theta = Math.toRadians(bendAngleDeg);
    double rho = sheet.neutralRadiusMm();
    double m = sheet.widthShare();
    var edge = EdgeDevelopment.of(side, tangentRadius, rho, theta, bend.flatMm(), m);
    if (edge != null) {
      return from(kind, sheet, bend, tangentRadius, edge);
    }
    Double flat = EdgeDevelopment.flatLimit(side, tangentRadius, rho, theta, m);
    throw flat == null ? tooTight(radius, null) : tooWide(width, bend.setbackMm() + flat);
  }

  private static FormingException tooTight(double radius, @Nullable Range allowed) {
    return FormingException.of(
        FLANGE_WIDER_THAN_CONTOUR, FormingInput.CONTOUR_RADIUS.field(), radius, allowed);
  }

  private static FormingException tooWide(double width, double limit) {
    return FormingException.of(
        FLANGE_WIDER_THAN_CONTOUR, FormingInput.FLANGE_WIDTH.field(), width, Range.below(limit));
  }

  private static FlangeSection from(
      FlangeKind kind, Sheet sheet, StraightBend bend, double tangentRadius, EdgeDevelopment edge) {
    return new FlangeSection(
        kind,
        bend.setbackMm(),
        bend.bendAllowanceMm(),
        bend.straightBlankMm(),
        tangentRadius,
        edge.beyondMm(),
        edge.formedRadiusMm(),
        edge.blankRadiusMm(),
        edge.strain(),
        edgeThicknessMm(sheet, edge.strain()),
        edge.gather() * 1000);
  }

  /** FM-THICK, mm. */
  static double edgeThicknessMm(Sheet sheet, double edgeStrain) {
    return sheet.thicknessMm() * Math.exp(-edgeStrain / (1 + sheet.anisotropy()));
  }
}
