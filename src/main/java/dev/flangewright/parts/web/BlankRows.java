package dev.flangewright.parts.web;

import dev.flangewright.forming.CutBlank;
import dev.flangewright.forming.Formula;
import dev.flangewright.forming.PartDevelopment;
import dev.flangewright.materials.Sourced;
import dev.flangewright.parts.PartFigures;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The figures of a blank as the part sheet shows them. */
final class BlankRows {

  private BlankRows() {}

  static List<FigureRow> of(PartFigures figures, PartDevelopment blank) {
    CutBlank cut = blank.cut();
    List<FigureRow> rows = new ArrayList<>();
    if (cut == null) {
      box(rows, blank.bounds());
    } else {
      rectangle(rows, cut);
    }
    rows.add(area(cut == null ? null : cut.areaMm2(), blank.holes().isEmpty()));
    rows.add(
        FigureRow.of("Mass", Figure.of(figures.blankMassKg(), 3, "kg"), Formula.MASS)
            .noting(density(figures)));
    return rows;
  }

  private static void box(List<FigureRow> rows, PartDevelopment.Bounds box) {
    double length = Math.max(box.widthMm(), box.heightMm());
    double breadth = Math.min(box.widthMm(), box.heightMm());
    rows.add(
        FigureRow.of("Length", Figure.mm(length, 1), Formula.OUTLINE)
            .noting("of the box around it, along the frame's axes"));
    rows.add(FigureRow.of("Breadth", Figure.mm(breadth, 1), Formula.OUTLINE));
  }

  private static void rectangle(List<FigureRow> rows, CutBlank cut) {
    var around = cut.rectangle();
    rows.add(
        FigureRow.of("Trim allowance", Figure.mm(cut.allowanceMm(), 1), Formula.ALLOWANCE)
            .noting(
                cut.allowanceMm() == 0
                    ? "none: the working width is the allowance on the flanges"
                    : "all round, on top of the working width"));
    rows.add(
        FigureRow.of("Cut length", Figure.mm(around.lengthMm(), 1), Formula.ALLOWANCE)
            .noting("of the smallest rectangle around it"));
    rows.add(FigureRow.of("Cut breadth", Figure.mm(around.breadthMm(), 1), Formula.ALLOWANCE));
    rows.add(
        FigureRow.of("Its length lies at", Figure.of(around.angleDeg(), 1, "°"), Formula.ALLOWANCE)
            .noting("from the frame's x axis towards y"));
  }

  private static FigureRow area(@Nullable Double areaMm2, boolean whole) {
    Double cm2 = areaMm2 == null ? null : areaMm2 / 100;
    return FigureRow.of("Area", Figure.of(cm2, 1, "cm²"), Formula.OUTLINE)
        .noting(whole ? "" : "holes taken off");
  }

  private static String density(PartFigures figures) {
    Sourced density = figures.metal().densityKgM3();
    return density == null ? "" : "density by " + density.said();
  }
}
