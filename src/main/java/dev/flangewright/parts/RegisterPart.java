package dev.flangewright.parts;

import dev.flangewright.forming.RiskLevel;
import dev.flangewright.forming.RiskMode;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A part as the register lists it: drawing data and the stored extract of its figures. */
public record RegisterPart(
    long id,
    String partNumber,
    String frame,
    Written framePositionMm,
    String segment,
    Hand hand,
    String drawing,
    String alloy,
    String temper,
    String thickness,
    String blockSet,
    @Nullable String figuresProblem,
    @Nullable String riskModeName,
    @Nullable String riskLevelName,
    @Nullable Double riskUtilisation) {

  /** The way this part is most likely lost; null without figures. */
  public @Nullable RiskMode riskMode() {
    return riskModeName == null ? null : RiskMode.valueOf(riskModeName);
  }

  /** How near that is; null without figures. */
  public @Nullable RiskLevel riskLevel() {
    return riskLevelName == null ? null : RiskLevel.valueOf(riskLevelName);
  }

  /** Whether a text occurs in what the register shows of the part, in small or capital letters. */
  boolean mentions(String text) {
    String wanted = text.toLowerCase(Locale.ROOT);
    return Stream.of(partNumber, frame, segment, drawing, alloy + " " + temper, thickness, blockSet)
        .anyMatch(shown -> shown.toLowerCase(Locale.ROOT).contains(wanted));
  }
}
