package dev.flangewright.forming;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The failure mode that governs a flange or a part.
 *
 * <p>FM-RISK: utilisations: split ε/ε_lim (FM-SPLIT), bend radius R_min/Ri (FM-RMIN), ruffle
 * passes/8 (FM-PASS; eight passes is a shop default, no source). The largest known one governs. A
 * mode whose values are missing is reported as unknown, so the risk may be higher than shown.
 *
 * @param modes every mode with its utilisation, null when unknown
 * @param governing the mode of the largest known utilisation
 * @param utilisation that utilisation
 */
public record Risk(List<Mode> modes, RiskMode governing, double utilisation) {

  /** Passes at which a shrink flange counts as fully used: shop default, no source. */
  public static final double PASSES_AT_LIMIT = 8;

  /** A failure mode and how far it is used up; null when a value it needs is missing. */
  public record Mode(RiskMode mode, @Nullable Double utilisation) {}

  /** The risk of a flange. */
  public static Risk of(FlangeFigures flange) {
    return of(List.of(flange));
  }

  /** The risk of a part, its worst flange; at least one flange. */
  public static Risk of(List<FlangeFigures> flanges) {
    var modes =
        List.of(
            worst(RiskMode.SPLIT, flanges, FlangeFigures::peakSplitUtilisation),
            worst(RiskMode.BEND_RADIUS, flanges, Risk::bendRadius),
            worst(RiskMode.RUFFLE, flanges, Risk::ruffle));
    var governing =
        modes.stream()
            .filter(mode -> mode.utilisation != null)
            .max(Comparator.comparingDouble(mode -> Objects.requireNonNull(mode.utilisation)))
            .orElseThrow();
    return new Risk(modes, governing.mode, Objects.requireNonNull(governing.utilisation));
  }

  public RiskLevel level() {
    return RiskLevel.of(utilisation);
  }

  /** The modes that could not be assessed for want of a value. */
  public List<RiskMode> unknown() {
    return modes.stream().filter(mode -> mode.utilisation == null).map(Mode::mode).toList();
  }

  private static Mode worst(
      RiskMode mode, List<FlangeFigures> flanges, Function<FlangeFigures, @Nullable Double> part) {
    var values = flanges.stream().map(part).toList();
    boolean known = values.stream().allMatch(Objects::nonNull);
    return new Mode(mode, known ? values.stream().max(Comparator.naturalOrder()).get() : null);
  }

  private static @Nullable Double bendRadius(FlangeFigures flange) {
    var check = flange.bendRadius();
    return check == null ? null : check.utilisation();
  }

  private static double ruffle(FlangeFigures flange) {
    return flange.formed().stream()
            .filter(station -> station.kind() == FlangeKind.SHRINK)
            .mapToInt(StationFigures::passes)
            .max()
            .orElse(0)
        / PASSES_AT_LIMIT;
  }
}
