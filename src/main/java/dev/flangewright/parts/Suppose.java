package dev.flangewright.parts;

import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.FormingInput;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Service;

/** Figures a part as if it were made otherwise than it is drawn. Nothing is stored. */
@Service
public class Suppose {

  private final CheckDrawing check;
  private final FigurePart figure;

  Suppose(CheckDrawing check, FigurePart figure) {
    this.check = check;
    this.figure = figure;
  }

  /**
   * @throws DrawingRefused if something written cannot be taken; the field of a flange is {@code
   *     flanges[i].…}, i its place in the part
   * @throws FormingException if a flange could not be made so, naming the station
   */
  public PartFigures of(Part part, Supposition supposed) {
    Supposition written = supposed.over(Supposition.of(part));
    Faults faults = new Faults();
    PartDrawing drawn = check.part(entry(part, written), faults);
    List<FlangeToFigure> flanges = flanges(part, written.flanges(), faults);
    faults.refuseIfAny();
    return figure.of(PartToFigure.of(part).supposing(drawn, flanges));
  }

  private static PartEntry entry(Part part, Supposition written) {
    PartEntry now = PartEntry.of(part);
    return new PartEntry(
        now.partNumber(),
        now.frame(),
        now.segment(),
        now.hand(),
        now.drawing(),
        now.drawingIssue(),
        written.alloy(),
        written.temper(),
        written.thicknessMm(),
        written.insideBendRadiusMm(),
        now.blockSet());
  }

  private List<FlangeToFigure> flanges(
      Part part, List<Supposition.OfFlange> written, Faults faults) {
    List<FlangeToFigure> flanges = new ArrayList<>();
    for (int i = 0; i < written.size(); i++) {
      Faults here = new Faults();
      if (i < part.flanges().size()) {
        flanges.add(flange(part.flanges().get(i), written.get(i), here));
      } else {
        here.add("name", written.get(i).name(), "the part has no flange of that name");
      }
      String row = "flanges[" + i + "].";
      here.list().forEach(fault -> faults.add(row + fault.field(), fault.value(), fault.reason()));
    }
    return flanges;
  }

  private FlangeToFigure flange(Flange flange, Supposition.OfFlange written, Faults faults) {
    FlangeToFigure now = FlangeToFigure.of(flange);
    FlangeDrawing drawn = check.flange(entry(flange, written), faults);
    EdgeCondition edge = CheckDrawing.edge(written.edgeCondition(), faults);
    Written turn = faults.number("turn_deg", written.turnDeg(), FormingInput.TURN);
    if (!faults.isEmpty()) {
      return now;
    }
    Otherwise line = new Otherwise(turn, now.drawn().workingWidthMm(), drawn.workingWidthMm());
    return now.supposing(drawn, edge, line.of(now.stations()));
  }

  private static FlangeEntry entry(Flange flange, Supposition.OfFlange written) {
    FlangeEntry now = FlangeEntry.of(flange);
    return new FlangeEntry(
        now.flange(),
        now.flangeKind(),
        written.finishedWidthMm(),
        written.workingWidthMm(),
        now.fitToleranceMm(),
        now.edgeCondition(),
        now.stations());
  }
}
