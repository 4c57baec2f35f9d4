package dev.flangewright.overview;

import dev.flangewright.bench.StageKind;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A piece in work, as the wall board reads it.
 *
 * @param stage the stage it stands at
 * @param begun the stage is started
 * @param held it waits for the check of a hold point, or a check was not met
 * @param since when the stage was started; null if it was not
 */
public record WallPiece(
    long id,
    String partNumber,
    int number,
    @Nullable String stage,
    @Nullable StageKind kind,
    boolean begun,
    boolean held,
    @Nullable String who,
    @Nullable Instant since) {

  boolean waits() {
    return held || (kind != null && kind.byInspection());
  }

  boolean isOnTheBench() {
    return begun && !waits();
  }
}
