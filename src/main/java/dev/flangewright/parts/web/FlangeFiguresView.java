package dev.flangewright.parts.web;

import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.Formula;
import dev.flangewright.forming.ShopValue;
import dev.flangewright.forming.SplitLimit;
import dev.flangewright.forming.StationFigures;
import dev.flangewright.materials.Metal;
import dev.flangewright.materials.ShopValues;
import dev.flangewright.materials.Sourced;
import dev.flangewright.parts.FlangeToFigure;
import dev.flangewright.parts.PartFigures;
import dev.flangewright.parts.drawing.StrainGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A flange on the part sheet.
 *
 * @param graph trusted SVG of the strain along its edge
 * @param edgesStanding where the factors and the elongation behind the edges come from
 * @param fit how well its contour agrees with the stations
 * @param plan how it is taken down
 * @param cutouts what is cut out of it, in words
 * @param trim what trimming to the finished width first would do; null where it does nothing
 */
record FlangeFiguresView(
    FlangeToFigure flange,
    String graph,
    List<FigureRow> blank,
    List<FigureRow> demand,
    List<EdgeRow> edges,
    String edgesStanding,
    FitView fit,
    PlanView plan,
    @Nullable TrimView trim,
    List<String> cutouts,
    List<BevelRow> bevels,
    List<StationRow> stations) {

  static FlangeFiguresView of(PartFigures part, PartFigures.OfFlange figured) {
    FlangeToFigure flange = figured.flange();
    FlangeFigures working = figured.working();
    return new FlangeFiguresView(
        flange,
        StrainGraph.of("strain-" + flange.id(), part.part().partNumber(), part, figured),
        blank(working),
        demand(
            working,
            SplitLimit.strain(part.metalValues(), flange.edgeCondition(), part.practice()),
            flange.edgeCondition().label(),
            part),
        EdgeRow.of(working, part, flange.edgeCondition()),
        EdgeRow.standing(part),
        FitView.of(part, figured),
        PlanView.of(part, figured),
        TrimView.of(part, figured),
        CutoutWords.of(flange.cutouts()),
        BevelRow.of(working),
        StationRow.of(working));
  }

  private static List<FigureRow> blank(FlangeFigures working) {
    return List.of(
        FigureRow.of("Contour length", Figure.mm(working.contourLengthMm(), 1), Formula.ARC_LENGTH)
            .noting("along the mould line"),
        FigureRow.of("Setback", range(working, StationFigures::setbackMm, 2, "mm"), Formula.SETBACK)
            .noting("mould line to tangent line"),
        FigureRow.of(
            "Bend allowance",
            range(working, StationFigures::bendAllowanceMm, 2, "mm"),
            Formula.BEND_ALLOWANCE),
        FigureRow.of(
                "Blank beyond the tangent line",
                range(working, StationFigures::blankBeyondTangentMm, 2, "mm"),
                Formula.DEVELOPMENT)
            .noting("station by station below"),
        FigureRow.of(
            "A straight flange would need",
            range(working, s -> s.section().straightBlankMm(), 2, "mm"),
            Formula.STRAIGHT_BLANK),
        FigureRow.of(
                "Block angle",
                range(working, StationFigures::blockAngleDeg, 1, "°"),
                Formula.BLOCK_ANGLE)
            .noting("opens to the drawn angle when released"));
  }

  private static List<FigureRow> demand(
      FlangeFigures working, @Nullable Double splitLimit, String edge, PartFigures part) {
    List<FigureRow> rows = new ArrayList<>();
    rows.add(
        FigureRow.of(
                "Peak edge strain",
                Figure.percent(working.peakEdgeStrain(), 2),
                Formula.DEVELOPMENT)
            .noting("at station " + working.peakStation()));
    if (working.takeOutMm() > 0) {
      rows.add(FigureRow.of("Edge to gather", Figure.mm(working.takeOutMm(), 1), Formula.SUMS));
    }
    if (working.putInMm() > 0) {
      rows.add(FigureRow.of("Edge to gain", Figure.mm(working.putInMm(), 1), Formula.SUMS));
    }
    rows.add(
        FigureRow.of(
            "Edge thickness",
            range(working, StationFigures::edgeThicknessMm, 3, "mm"),
            Formula.EDGE_THICKNESS));
    if (working.takeOutMm() > 0) {
      rows.add(
          FigureRow.of("Ruffle ratio", Figure.of(working.peakRuffleRatio(), 1, ""), Formula.RUFFLE)
              .noting(
                  working.peakRuffleRatio() < 1
                      ? "below 1: the edge goes down unaided"
                      : "above 1: every pass must shrink"));
    }
    rows.add(
        FigureRow.of("Passes", Figure.of((double) working.passes(), 0, ""), Formula.PASSES)
            .noting("strain a pass: " + passStanding(part.shopValues())));
    if (working.putInMm() > 0) {
      rows.add(
          FigureRow.of("Split limit", Figure.percent(splitLimit, 2), Formula.SPLIT)
              .noting("edge " + edge + "; " + elongation(part.metal())));
      rows.add(
          FigureRow.of(
              "Used of the split limit",
              Figure.percent(working.peakSplitUtilisation(), 0),
              Formula.SPLIT));
    }
    return rows;
  }

  private static String passStanding(ShopValues values) {
    boolean own =
        values.isOwn(ShopValue.STRAIN_PER_PASS) || values.isOwn(ShopValue.RUFFLE_MULTIPLE);
    return own ? "this build's own, see the shop values" : ShopValue.NO_SOURCE;
  }

  /** The elongation behind the split limit. */
  static String elongation(Metal metal) {
    Sourced known = metal.elongationPct();
    return known == null
        ? "elongation not known"
        : "elongation " + Figure.of(known.value(), 1, "%") + ": " + known.said();
  }

  private static Figure range(
      FlangeFigures figures,
      Function<StationFigures, @Nullable Double> figure,
      int decimals,
      String unit) {
    List<@Nullable Double> values = new ArrayList<>();
    figures.formed().forEach(station -> values.add(figure.apply(station)));
    return Figure.range(values, decimals, unit);
  }
}
