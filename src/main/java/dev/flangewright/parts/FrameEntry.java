package dev.flangewright.parts;

import java.util.Objects;

/** A frame as somebody wrote it into a form, before it is checked. */
public record FrameEntry(String frame, String framePositionMm, String jigOrder) {

  /** Nothing filled in yet. */
  public static final FrameEntry EMPTY = new FrameEntry("", "", "");

  /** A field that was not sent at all counts as empty. */
  public FrameEntry {
    frame = Objects.requireNonNullElse(frame, "");
    framePositionMm = Objects.requireNonNullElse(framePositionMm, "");
    jigOrder = Objects.requireNonNullElse(jigOrder, "");
  }

  /** A frame as it stands in the register. */
  public static FrameEntry of(Frame frame) {
    Integer order = frame.jigOrder();
    return new FrameEntry(
        frame.code(), frame.positionMm().text(), order == null ? "" : order.toString());
  }
}
