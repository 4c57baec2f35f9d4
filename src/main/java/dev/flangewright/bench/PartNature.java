package dev.flangewright.bench;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.Part;
import java.util.List;
import java.util.regex.Pattern;

/** What decides which route a part usually takes. */
public enum PartNature {
  PLAIN("no flange, or straight ones only"),
  SHRINK_FLANGE("one shrink flange"),
  STRETCH_FLANGE("one stretch flange"),
  TWO_FLANGES("two flanges or more"),
  HEAT_TREATED("drawn in a temper that the workshop treats itself");

  /**
   * W, T42 and T62: solution treated by whoever uses the sheet, not by the mill (ANSI H35.1, from
   * memory). Sheet of the mill's own tempers is formed as it is delivered.
   */
  private static final Pattern TREATED_IN_THE_SHOP = Pattern.compile("(?i)\\s*(W|T[46]2)\\b.*");

  private final String words;

  PartNature(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  static PartNature of(Part part) {
    List<FlangeKind> kinds = part.flanges().stream().map(Flange::drawn).map(d -> d.kind()).toList();
    return of(part.drawn().temper(), kinds);
  }

  /** A single flange of mixed contour counts as a stretch flange: that is how it would be lost. */
  static PartNature of(String temper, List<FlangeKind> flanges) {
    if (TREATED_IN_THE_SHOP.matcher(temper).matches()) {
      return HEAT_TREATED;
    }
    if (flanges.stream().allMatch(kind -> kind == FlangeKind.PLAIN)) {
      return PLAIN;
    }
    if (flanges.size() > 1) {
      return TWO_FLANGES;
    }
    return flanges.get(0) == FlangeKind.SHRINK ? SHRINK_FLANGE : STRETCH_FLANGE;
  }
}
