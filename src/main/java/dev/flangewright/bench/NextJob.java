package dev.flangewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing to be done next, with why it stands where it does.
 *
 * @param pieceId the piece in work; null where a new piece is to be begun
 * @param pieceNumber the number of that piece, or of the one to be begun
 * @param stageName the stage to be done
 * @param sentence what to do: {@code "Finish “First flange in passes” on TW-F07-S3L piece 1"}
 * @param reasons in plain words, the weightiest first
 * @param waitsFor what keeps the person who asks from it, and who can clear it; empty unless the
 *     kind is {@link Kind#WAIT}
 * @param twinToBegin the part number of the other hand, where both can be begun together; or null
 * @param passedOnBecause why the person who asks passed on it today; null if not
 */
public record NextJob(
    long partId,
    String partNumber,
    @Nullable Long pieceId,
    int pieceNumber,
    String stageName,
    String sentence,
    List<String> reasons,
    Kind kind,
    List<StageBar> waitsFor,
    @Nullable String twinToBegin,
    @Nullable String passedOnBecause) {

  /** What sort of job it is for the person who asks. */
  public enum Kind {
    /** Do the check of a hold point. */
    CHECK,
    /** Inspect a piece that has come to its inspection. */
    INSPECT,
    /** Start or finish the open stage of a piece. */
    CARRY_ON,
    /** Begin a piece, the first of its part or after a scrapped one. */
    BEGIN,
    /** Something is missing, or it is somebody else's. */
    WAIT,
    /** Cannot be begun: the part has no figures to cut a blank by. */
    NOT_READY
  }

  /** The parts of the list in their order. */
  public enum Standing {
    TO_DO,
    PASSED_ON,
    WAITING,
    NOT_READY
  }

  /** Where it stands for the person who asks. */
  public Standing standing() {
    return switch (kind) {
      case WAIT -> Standing.WAITING;
      case NOT_READY -> Standing.NOT_READY;
      default -> passedOnBecause == null ? Standing.TO_DO : Standing.PASSED_ON;
    };
  }
}
