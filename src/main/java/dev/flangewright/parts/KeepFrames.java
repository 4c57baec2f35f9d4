package dev.flangewright.parts;

import dev.flangewright.forming.FormingInput;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Adds frames to a build, moves them along the hull and says which the jig needs first. */
@Service
public class KeepFrames {

  private final Builds builds;
  private final Frames frames;

  KeepFrames(Builds builds, Frames frames) {
    this.builds = builds;
    this.frames = frames;
  }

  /**
   * @throws DrawingRefused if something written cannot be taken
   * @throws Refused if the build has a frame of that code already
   */
  @MayEditRegister
  @Transactional
  public Frame add(long buildId, FrameEntry written) {
    Build build = builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId));
    Place place = checked(written);
    if (frames.findByBuildIdAndCode(buildId, written.frame()).isPresent()) {
      throw Refused.conflict("There is already a frame \"" + written.frame() + "\" in this build.");
    }
    Frame frame = new Frame(build, written.frame(), place.positionMm());
    frame.isNeeded(place.jigOrder());
    return frames.save(frame);
  }

  /**
   * The frame keeps its code, under which the register file knows it.
   *
   * @throws DrawingRefused if the position or the order cannot be taken
   * @throws Refused if somebody else changed the frame since {@code version} was read
   */
  @MayEditRegister
  @Transactional
  public void move(long id, long version, FrameEntry written) {
    Frame frame = frames.findById(id).orElseThrow(() -> Refused.unknown("frame", id));
    if (frame.version() != version) {
      throw Refused.conflict("Somebody changed this frame in the meantime.");
    }
    Place place = checked(written);
    frame.isAt(place.positionMm());
    frame.isNeeded(place.jigOrder());
  }

  private record Place(Written positionMm, @Nullable Integer jigOrder) {}

  /** A position has the range of a coordinate; the order in the jig counts from 1. */
  private static Place checked(FrameEntry written) {
    Faults faults = new Faults();
    faults.text("frame", written.frame(), 40);
    Written position =
        faults.number("frame_position_mm", written.framePositionMm(), FormingInput.X);
    Integer order = faults.perhapsCount("jig_order", written.jigOrder(), 999);
    faults.refuseIfAny();
    return new Place(position, order);
  }
}
