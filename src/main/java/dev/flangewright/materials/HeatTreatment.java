package dev.flangewright.materials;

import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A row of the shipped heat treatments.
 *
 * @param alloys the alloys or the group it is for, as its source has them: {@code 2014, 2024, 2219}
 * @param appliesTo what the figures hold for: a thickness, a temperature, or a rule in words
 * @param low least figure; null where there is none
 * @param high largest figure; null where there is none
 * @param unit of the figures; null where there are none
 */
public record HeatTreatment(
    String alloys,
    String step,
    @Nullable String appliesTo,
    @Nullable Double low,
    @Nullable Double high,
    @Nullable String unit,
    String source,
    String knownBy,
    @Nullable String note) {

  /** An alloy's number, perhaps as "6082-type (BS L113)"; "2024 rivets" is not the sheet. */
  private static final Pattern ALLOY = Pattern.compile("(\\d{4}[A-Z]?)(-type.*)?");

  private static final String CLAD = "alclad";

  /** Whether the row names this alloy of sheet; cladding does not make it another alloy. */
  public boolean names(String alloy) {
    String core = alloy.toLowerCase(Locale.ROOT).replace(CLAD, "").strip();
    return parts()
        .map(ALLOY::matcher)
        .filter(Matcher::matches)
        .anyMatch(part -> part.group(1).equalsIgnoreCase(core));
  }

  /** Whether the row is for a group of which this alloy may be one: aluminium, wrought, alclad. */
  public boolean isForAGroupWith(String alloy) {
    boolean group = parts().noneMatch(part -> Character.isDigit(part.charAt(0)));
    boolean cladOnly = alloys.equalsIgnoreCase(CLAD);
    return group && (!cladOnly || alloy.toLowerCase(Locale.ROOT).contains(CLAD));
  }

  private Stream<String> parts() {
    return Arrays.stream(alloys.split(",")).map(String::strip);
  }

  @Nullable Sourced lowest() {
    return low == null ? null : new Sourced(low, source, knownBy);
  }

  @Nullable Sourced highest() {
    return high == null ? null : new Sourced(high, source, knownBy);
  }
}
