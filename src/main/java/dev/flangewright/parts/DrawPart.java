package dev.flangewright.parts;

import dev.flangewright.forming.FormingException;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Enters a part into the register, takes over a new issue of its drawing, and strikes it out. */
@Service
public class DrawPart {

  private final Builds builds;
  private final Frames frames;
  private final Parts parts;
  private final CheckDrawing check;
  private final FigurePart figure;
  private final Untouched untouched;

  DrawPart(
      Builds builds,
      Frames frames,
      Parts parts,
      CheckDrawing check,
      FigurePart figure,
      Untouched untouched) {
    this.builds = builds;
    this.frames = frames;
    this.parts = parts;
    this.check = check;
    this.figure = figure;
    this.untouched = untouched;
  }

  /**
   * @throws DrawingRefused if something written cannot be taken
   * @throws Refused if the build has the part number already
   */
  @MayEditRegister
  @Transactional
  public Part add(long buildId, PartEntry written) {
    if (!builds.existsById(buildId)) {
      throw Refused.unknown("build", buildId);
    }
    Faults faults = new Faults();
    PartDrawing drawn = check.part(written, faults);
    Optional<Frame> frame = frame(buildId, written.frame(), faults);
    faults.refuseIfAny();
    if (parts.findByBuildIdAndPartNumber(buildId, written.partNumber()).isPresent()) {
      throw Refused.conflict(
          "There is already a part \"" + written.partNumber() + "\" in this build.");
    }
    Part part = new Part(frame.orElseThrow(), written.partNumber(), drawn);
    figure.sumUp(part);
    return parts.save(part);
  }

  /**
   * Takes over what is written; the part keeps its number, under which pieces and files know it.
   *
   * @throws DrawingRefused if something written cannot be taken
   * @throws Refused if a flange could not be made any more, or if somebody else changed the part
   *     since {@code version} was read
   */
  @MayEditRegister
  @Transactional
  public void redraw(long id, long version, PartEntry written) {
    Part part = at(id, version);
    Faults faults = new Faults();
    PartDrawing drawn = check.part(written, faults);
    Optional<Frame> frame = frame(part.build().id(), written.frame(), faults);
    faults.refuseIfAny();
    part.isDrawn(frame.orElseThrow(), drawn);
    canBeMade(part);
    figure.sumUp(part);
  }

  /**
   * @return the build it belonged to
   * @throws Refused if a piece of the part was ever begun, or somebody else changed the part
   */
  @MayEditRegister
  @Transactional
  public long remove(long id, long version) {
    Part part = at(id, version);
    untouched.orRefuse(part);
    parts.delete(part);
    return part.build().id();
  }

  private void canBeMade(Part part) {
    try {
      PartFigures unused = figure.of(part);
    } catch (FormingException refusal) {
      throw Refused.unacceptable(
          "With this sheet a flange could not be made: " + refusal.getMessage() + ".");
    }
  }

  private Part at(long id, long version) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    if (part.version() != version) {
      throw Refused.conflict("Somebody changed this part in the meantime.");
    }
    return part;
  }

  private Optional<Frame> frame(long buildId, String code, Faults faults) {
    Optional<Frame> frame = frames.findByBuildIdAndCode(buildId, code);
    if (frame.isEmpty()) {
      faults.add("frame", code, "this build has no such frame; add it first");
    }
    return frame;
  }
}
