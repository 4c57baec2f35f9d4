package dev.flangewright.parts;

import dev.flangewright.forming.Cutout;
import dev.flangewright.forming.EdgeCondition;
import java.util.List;
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
    WrittenStations stations,
    WrittenCutouts cutouts) {

  /** A flange as it stands in the register. */
  public static FlangeToFigure of(Flange flange) {
    return new FlangeToFigure(
        flange.storedId(),
        flange.name(),
        flange.drawn(),
        flange.edgeCondition(),
        flange.stations(),
        flange.cutouts());
  }

  /** What is cut out of it, to calculate with. */
  public List<Cutout> cutOut() {
    return cutouts.list().stream().map(written -> written.cutout(drawn)).toList();
  }

  /** The same flange drawn, left or laid down otherwise. */
  FlangeToFigure supposing(FlangeDrawing other, EdgeCondition edge, WrittenStations line) {
    return new FlangeToFigure(storedId, name, other, edge, line, cutouts);
  }

  /** The identity; of a stored flange only. */
  public long id() {
    return Objects.requireNonNull(storedId);
  }
}
