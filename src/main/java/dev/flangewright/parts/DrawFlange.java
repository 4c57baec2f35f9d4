package dev.flangewright.parts;

import dev.flangewright.forming.Contour;
import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FormingException;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Adds a flange to a part, draws it anew together with its contour, and strikes it out. */
@Service
public class DrawFlange {

  private final Parts parts;
  private final Flanges flanges;
  private final CheckDrawing check;
  private final FigurePart figure;
  private final Untouched untouched;

  DrawFlange(
      Parts parts, Flanges flanges, CheckDrawing check, FigurePart figure, Untouched untouched) {
    this.parts = parts;
    this.flanges = flanges;
    this.check = check;
    this.figure = figure;
    this.untouched = untouched;
  }

  /**
   * @throws DrawingRefused if something written cannot be taken or the flange cannot be made
   * @throws Refused if the part has a flange of that name already
   */
  @MayEditRegister
  @Transactional
  public Flange add(long partId, FlangeEntry written) {
    Part part = parts.whole(partId).orElseThrow(() -> Refused.unknown("part", partId));
    Drawn drawn = drawn(written);
    if (part.flange(written.flange()).isPresent()) {
      throw Refused.conflict(
          part.partNumber() + " already has a flange \"" + written.flange() + "\".");
    }
    int order = flanges.lastOrder(part.build().id()) + 1;
    Flange flange = part.addFlange(written.flange(), drawn.flange, order);
    lay(flange, drawn, order);
    return flanges.save(flange);
  }

  /**
   * The flange keeps its name, under which the contour file knows it.
   *
   * @throws DrawingRefused if something written cannot be taken or the flange cannot be made
   * @throws Refused if somebody else changed the flange since {@code version} was read
   */
  @MayEditRegister
  @Transactional
  public void redraw(long id, long version, FlangeEntry written) {
    Flange flange = at(id, version);
    Drawn drawn = drawn(written);
    flange.isDrawn(drawn.flange);
    lay(flange, drawn, flange.contourOrder());
  }

  /**
   * @throws Refused if a piece of the part was ever begun, or somebody else changed the flange
   */
  @MayEditRegister
  @Transactional
  public void remove(long id, long version) {
    Flange flange = at(id, version);
    Part part = flange.part();
    untouched.orRefuse(part);
    part.removeFlange(flange);
    figure.sumUp(part);
  }

  private Flange at(long id, long version) {
    Flange flange = flanges.findById(id).orElseThrow(() -> Refused.unknown("flange", id));
    if (flange.version() != version) {
      throw Refused.conflict("Somebody changed this flange in the meantime.");
    }
    return flange;
  }

  private record Drawn(FlangeDrawing flange, EdgeCondition edge, WrittenStations stations) {}

  private Drawn drawn(FlangeEntry written) {
    Faults faults = new Faults();
    Drawn drawn =
        new Drawn(
            check.flange(written, faults),
            CheckDrawing.edge(written.edgeCondition(), faults),
            ContourLines.read(written.stations(), faults));
    faults.refuseIfAny();
    if (!drawn.stations.isEmpty()) {
      CheckDrawing.kindAgrees(drawn.flange.kind(), contour(drawn), faults);
      faults.refuseIfAny();
    }
    return drawn;
  }

  private void lay(Flange flange, Drawn drawn, int contourOrder) {
    flange.edgeIs(drawn.edge);
    flange.follows(drawn.stations, contourOrder);
    try {
      PartFigures unused = figure.of(flange.part());
    } catch (FormingException refusal) {
      throw cannotBeMade(refusal);
    }
    figure.sumUp(flange.part());
  }

  private static Contour contour(Drawn drawn) {
    try {
      return ContourOf.atWorkingWidth(drawn.stations, drawn.flange);
    } catch (FormingException refusal) {
      throw cannotBeMade(refusal);
    }
  }

  private static DrawingRefused cannotBeMade(FormingException refusal) {
    boolean tolerance = refusal.reason() == FormingException.Reason.NO_FAIR_CURVE;
    Faults faults = new Faults();
    faults.add(
        tolerance ? "fit_tolerance_mm" : "stations", "", String.valueOf(refusal.getMessage()));
    return new DrawingRefused(faults.list());
  }
}
