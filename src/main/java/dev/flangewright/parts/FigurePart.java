package dev.flangewright.parts;

import dev.flangewright.forming.Contour;
import dev.flangewright.forming.CutBlank;
import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.FormingModel;
import dev.flangewright.forming.MetalValues;
import dev.flangewright.forming.PartDevelopment;
import dev.flangewright.forming.Practice;
import dev.flangewright.forming.Risk;
import dev.flangewright.forming.Sheet;
import dev.flangewright.materials.KeepShopValues;
import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.materials.Metal;
import dev.flangewright.materials.ShopValues;
import dev.flangewright.materials.Sourced;
import dev.flangewright.materials.Thickness;
import dev.flangewright.people.Refused;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Computes a part's forming figures, and stores the extract that lists read. */
@Service
public class FigurePart {

  private final MaterialLibrary library;
  private final KeepShopValues shop;

  FigurePart(MaterialLibrary library, KeepShopValues shop) {
    this.library = library;
    this.shop = shop;
  }

  /**
   * @throws FormingException if a contour or a flange cannot be made, naming the station
   * @throws Refused if the thickness cannot be read
   */
  public PartFigures of(Part part) {
    return of(PartToFigure.of(part));
  }

  /**
   * The figures of a part that may not be the one in the register; nothing is stored.
   *
   * @throws FormingException if a contour or a flange cannot be made, naming the station
   * @throws Refused if the thickness cannot be read
   */
  public PartFigures of(PartToFigure part) {
    PartDrawing drawn = part.drawn();
    Thickness thickness =
        library
            .thickness(drawn.thickness())
            .orElseThrow(() -> Refused.unacceptable("thickness_mm cannot be read."));
    ShopValues shopValues = shop.of(part.buildId());
    Practice practice = shopValues.practice();
    Metal metal = library.metal(part.buildId(), drawn.alloy(), drawn.temper(), thickness.mm());
    Sheet sheet =
        Sheet.of(
            thickness.mm(),
            drawn.insideBendRadiusMm().value(),
            value(metal.anisotropy()),
            practice);
    MetalValues values = values(metal);
    List<PartFigures.OfFlange> flanges =
        part.flanges().stream()
            .filter(flange -> !flange.stations().isEmpty())
            .map(flange -> ofFlange(flange, sheet, values, practice))
            .toList();
    return summed(part, thickness, sheet, metal, values, shopValues, flanges);
  }

  /** Computes and stores the extract; a part that cannot be figured keeps the reason instead. */
  public void sumUp(Part part) {
    part.flanges().forEach(flange -> flange.summary().sketchedAs(Sketch.of(flange.stations())));
    try {
      store(part, of(part));
    } catch (FormingException | Refused refusal) {
      part.flanges().forEach(flange -> flange.summary().failed());
      part.summary().failed(FormingModel.VERSION, String.valueOf(refusal.getMessage()));
    }
  }

  private static PartFigures.OfFlange ofFlange(
      FlangeToFigure flange, Sheet sheet, MetalValues values, Practice practice) {
    Contour working = ContourOf.atWorkingWidth(flange.stations(), flange.drawn());
    Contour finished = ContourOf.atFinishedWidth(flange.stations(), flange.drawn());
    return new PartFigures.OfFlange(
        flange,
        working,
        FlangeFigures.of(working, sheet, values, flange.edgeCondition(), flange.cutOut(), practice),
        FlangeFigures.of(
            finished, sheet, values, flange.edgeCondition(), flange.cutOut(), practice));
  }

  private static PartFigures summed(
      PartToFigure part,
      Thickness thickness,
      Sheet sheet,
      Metal metal,
      MetalValues values,
      ShopValues shopValues,
      List<PartFigures.OfFlange> flanges) {
    List<FlangeFigures> working = flanges.stream().map(PartFigures.OfFlange::working).toList();
    if (flanges.isEmpty()) {
      return new PartFigures(
          part, thickness, sheet, metal, values, shopValues, flanges, null, null, null);
    }
    PartDevelopment blank =
        PartDevelopment.of(
            flanges.stream().map(PartFigures.OfFlange::contour).toList(),
            working,
            part.holes().list().stream().map(WrittenHole::hole).toList(),
            part.trimAllowanceMm().value());
    return new PartFigures(
        part,
        thickness,
        sheet,
        metal,
        values,
        shopValues,
        flanges,
        blank,
        blank.massKg(values.densityKgM3(), thickness.mm()),
        Risk.of(working));
  }

  private static void store(Part part, PartFigures figures) {
    PartDevelopment blank = figures.development();
    Risk risk = figures.risk();
    if (blank == null || risk == null) {
      part.summary().failed(FormingModel.VERSION, "No flange of this part has a contour yet.");
      return;
    }
    CutBlank cut = blank.cut();
    part.summary()
        .blank(
            FormingModel.VERSION,
            blank.problem(),
            cut == null ? null : cut.areaMm2(),
            cut == null ? longer(blank.bounds()) : cut.rectangle().lengthMm(),
            cut == null ? shorter(blank.bounds()) : cut.rectangle().breadthMm(),
            figures.blankMassKg());
    part.summary().risk(risk.governing().name(), risk.level().name(), risk.utilisation());
    figures
        .flanges()
        .forEach(figured -> store(part.flange(figured.flange().name()).orElseThrow(), figured));
  }

  private static double longer(PartDevelopment.Bounds box) {
    return Math.max(box.widthMm(), box.heightMm());
  }

  private static double shorter(PartDevelopment.Bounds box) {
    return Math.min(box.widthMm(), box.heightMm());
  }

  private static void store(Flange flange, PartFigures.OfFlange figured) {
    FlangeFigures figures = figured.working();
    FlangeSummary summary = flange.summary();
    summary.demand(
        figures.peakEdgeStrain(),
        figures.peakStation(),
        figures.gatherMm(),
        figures.contourLengthMm());
    summary.limits(figures.peakRuffleRatio(), figures.peakSplitUtilisation(), figures.passes());
  }

  private static MetalValues values(Metal metal) {
    return new MetalValues(
        value(metal.elongationPct()),
        value(metal.proofMpa()),
        value(metal.utsMpa()),
        value(metal.youngMpa()),
        value(metal.densityKgM3()),
        value(metal.minBendRadiusMm()));
  }

  private static @Nullable Double value(@Nullable Sourced sourced) {
    return sourced == null ? null : sourced.value();
  }
}
