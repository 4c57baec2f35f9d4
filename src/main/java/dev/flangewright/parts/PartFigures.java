package dev.flangewright.parts;

import dev.flangewright.forming.Contour;
import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.HoleCheck;
import dev.flangewright.forming.HoleFinding;
import dev.flangewright.forming.MetalValues;
import dev.flangewright.forming.PartDevelopment;
import dev.flangewright.forming.Practice;
import dev.flangewright.forming.Risk;
import dev.flangewright.forming.Sheet;
import dev.flangewright.materials.Metal;
import dev.flangewright.materials.ShopValues;
import dev.flangewright.materials.Sourced;
import dev.flangewright.materials.Thickness;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All forming figures of a part, computed from its register entry or from a supposition. Only
 * flanges with a contour are in the list; {@code development} and {@code risk} are null when there
 * is none.
 *
 * @param metal what is known of the alloy, with sources
 * @param shopValues what the build uses in place of the shop defaults
 */
public record PartFigures(
    PartToFigure part,
    Thickness thickness,
    Sheet sheet,
    Metal metal,
    MetalValues metalValues,
    ShopValues shopValues,
    List<OfFlange> flanges,
    @Nullable PartDevelopment development,
    @Nullable Double blankMassKg,
    @Nullable Risk risk) {

  /** Where the values of the metal behind springback come from; empty where they are not known. */
  public String springbackGround() {
    Sourced proof = metal.proofMpa();
    Sourced young = metal.youngMpa();
    return proof == null || young == null
        ? ""
        : "Proof stress by %s. Young's modulus by %s".formatted(proof.said(), young.said());
  }

  /** What the figures are computed with where no table of metals gives it. */
  public Practice practice() {
    return shopValues.practice();
  }

  /** What there is to mind about the holes in the web. */
  public List<HoleFinding> holeFindings() {
    return development == null ? List.of() : HoleCheck.of(development, sheet.thicknessMm());
  }

  /** The figures of one flange, at the width carried while forming and trimmed to the finished. */
  public record OfFlange(
      FlangeToFigure flange, Contour contour, FlangeFigures working, FlangeFigures finished) {}
}
