package dev.flangewright.parts;

import dev.flangewright.forming.EdgeCondition;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What the figures of one flange are computed from.
 *
 * @param storedId the identity in the register; null while the flange is not stored
 * @param stations of the mould line; none where the contour is not known yet
 */
public record FlangeToFigure(
    @Nullable Long storedId,
    String name,
    FlangeDrawing drawn,
    EdgeCondition edgeCondition,
    WrittenStations stations) {

  /** A flange as it stands in the register. */
  public static FlangeToFigure of(Flange flange) {
    return new FlangeToFigure(
        flange.storedId(),
        flange.name(),
        flange.drawn(),
        flange.edgeCondition(),
        flange.stations());
  }

  /** The same flange drawn, left or laid down otherwise. */
  FlangeToFigure supposing(FlangeDrawing other, EdgeCondition edge, WrittenStations line) {
    return new FlangeToFigure(storedId, name, other, edge, line);
  }

  /** The identity; of a stored flange only. */
  public long id() {
    return Objects.requireNonNull(storedId);
  }
}
