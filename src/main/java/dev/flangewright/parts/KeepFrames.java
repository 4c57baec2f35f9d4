package dev.flangewright.parts;

import dev.flangewright.forming.FormingInput;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Adds frames to a build and moves them along the hull. */
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
    Written position = checked(written);
    if (frames.findByBuildIdAndCode(buildId, written.frame()).isPresent()) {
      throw Refused.conflict("There is already a frame \"" + written.frame() + "\" in this build.");
    }
    return frames.save(new Frame(build, written.frame(), position));
  }

  /**
   * The frame keeps its code, under which the register file knows it.
   *
   * @throws DrawingRefused if the position cannot be taken
   * @throws Refused if somebody else changed the frame since {@code version} was read
   */
  @MayEditRegister
  @Transactional
  public void move(long id, long version, FrameEntry written) {
    Frame frame = frames.findById(id).orElseThrow(() -> Refused.unknown("frame", id));
    if (frame.version() != version) {
      throw Refused.conflict("Somebody changed this frame in the meantime.");
    }
    frame.isAt(checked(written));
  }

  /** A position has the range of a coordinate. */
  private static Written checked(FrameEntry written) {
    Faults faults = new Faults();
    faults.text("frame", written.frame(), 40);
    Written position =
        faults.number("frame_position_mm", written.framePositionMm(), FormingInput.X);
    faults.refuseIfAny();
    return position;
  }
}
