package dev.flangewright.parts.web;

import dev.flangewright.forming.BendRadiusCheck;
import dev.flangewright.forming.Formula;
import dev.flangewright.forming.HoleFinding;
import dev.flangewright.forming.PartDevelopment;
import dev.flangewright.forming.Springback;
import dev.flangewright.materials.Sourced;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartFigures;
import dev.flangewright.parts.drawing.SegmentDrawing;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The figures of a part as its sheet shows them.
 *
 * @param verdict the answer to the page's question
 * @param drawing trusted SVG of the part, empty without a contour
 * @param grain which way the grain should run; empty without a contour
 * @param holeWarnings what there is to mind about the holes, in sentences
 * @param outlineProblem what is wrong with the developed outline; null when nothing is
 */
record PartSheetView(
    String verdict,
    String drawing,
    List<FlangeFiguresView> flanges,
    List<FigureRow> bend,
    List<FigureRow> blank,
    String grain,
    boolean closedByChord,
    @Nullable String outlineProblem,
    List<HoleRow> holes,
    List<String> holeWarnings,
    List<MetalRow> metal,
    List<ShopValueRow> shopValues) {

  static PartSheetView of(Part part, PartFigures figures) {
    PartDevelopment blank = figures.development();
    return new PartSheetView(
        Verdict.of(figures),
        SegmentDrawing.of("segment", part.partNumber(), figures),
        figures.flanges().stream().map(one -> FlangeFiguresView.of(figures, one)).toList(),
        bend(figures),
        blank == null ? List.of() : BlankRows.of(figures, blank),
        blank == null ? "" : GrainAdvice.of(blank.bendLines()),
        blank != null && blank.closedByChord(),
        blank == null ? null : blank.problem(),
        part.holes().list().stream().map(HoleRow::of).toList(),
        figures.holeFindings().stream().map(HoleFinding::sentence).toList(),
        MetalRow.of(figures.metal()),
        ShopValueRow.of(figures.shopValues()));
  }

  private static List<FigureRow> bend(PartFigures figures) {
    Sourced least = figures.metal().minBendRadiusMm();
    BendRadiusCheck check = BendRadiusCheck.of(figures.sheet(), figures.metalValues());
    Double block = Springback.blockRadiusMm(figures.sheet(), figures.metalValues());
    List<FigureRow> rows = new ArrayList<>();
    rows.add(
        FigureRow.of("Thickness", Figure.mm(figures.thickness().mm(), 3), null)
            .noting("written " + figures.thickness().written()));
    rows.add(
        FigureRow.of(
            "Inside bend radius", Figure.mm(figures.sheet().insideBendRadiusMm(), 2), null));
    rows.add(
        FigureRow.of(
                "Smallest allowed",
                Figure.mm(check == null ? null : check.minBendRadiusMm(), 2),
                Formula.BEND_RADIUS)
            .noting(least == null ? "no certificate and no table has this metal" : least.said()));
    if (check != null) {
      rows.add(
          FigureRow.of(
                  "Used of the bend radius",
                  Figure.percent(check.utilisation(), 0),
                  Formula.BEND_RADIUS)
              .noting(check.isWideEnough() ? "wide enough" : "tighter than allowed"));
    }
    rows.add(
        FigureRow.of("Block radius", Figure.mm(block, 2), Formula.SPRINGBACK)
            .noting(
                "a hand-formed flange springs back more: prove it on a trial piece"
                    + ground(figures)));
    return rows;
  }

  private static String ground(PartFigures figures) {
    String said = figures.springbackGround();
    return said.isEmpty() ? "" : ". " + said;
  }
}
