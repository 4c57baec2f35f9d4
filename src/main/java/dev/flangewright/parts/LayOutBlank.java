package dev.flangewright.parts;

import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.FormingInput;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Takes over what is left round a part's blank and what is cut out of it. */
@Service
public class LayOutBlank {

  private final Parts parts;
  private final FigurePart figure;
  private final EntityManager entities;

  LayOutBlank(Parts parts, FigurePart figure, EntityManager entities) {
    this.parts = parts;
    this.figure = figure;
    this.entities = entities;
  }

  /**
   * Replaces trim allowance, holes and cutouts of a part.
   *
   * @throws DrawingRefused if something written cannot be taken or a cutout cannot be made
   * @throws Refused if somebody else changed the part since {@code version} was read
   */
  @MayEditRegister
  @Transactional
  public void redraw(long id, long version, LayoutEntry written) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    if (part.version() != version) {
      throw Refused.conflict("Somebody changed this part in the meantime.");
    }
    Faults faults = new Faults();
    CheckLayout check = new CheckLayout(faults);
    Written allowance =
        faults.number("trim_allowance_mm", written.trimAllowanceMm(), FormingInput.TRIM_ALLOWANCE);
    WrittenHoles holes = check.holes(written.holes());
    Map<Flange, WrittenCutouts> cutouts = check.cutouts(written.cutouts(), part);
    faults.refuseIfAny();
    part.isLaidOut(allowance, holes);
    cutouts.forEach(Flange::isCutOut);
    entities.lock(part, LockModeType.OPTIMISTIC_FORCE_INCREMENT);
    canBeMade(part);
    figure.sumUp(part);
  }

  private void canBeMade(Part part) {
    try {
      PartFigures unused = figure.of(part);
    } catch (FormingException refusal) {
      Faults faults = new Faults();
      faults.add("cutouts", "", String.valueOf(refusal.getMessage()));
      faults.refuseIfAny();
    }
  }
}
