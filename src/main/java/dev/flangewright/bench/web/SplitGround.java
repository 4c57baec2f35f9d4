package dev.flangewright.bench.web;

import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.ShopValue;
import dev.flangewright.materials.Metal;
import dev.flangewright.materials.ShopValues;
import dev.flangewright.materials.Sourced;
import java.util.Locale;
import java.util.Optional;

/**
 * What the split limit of a part rests on.
 *
 * @param words the elongation and the factors with their sources, as a sentence
 */
record SplitGround(ShopValues shop, String words) {

  static SplitGround of(Optional<Metal> metal, ShopValues shop) {
    String elongation =
        metal.map(Metal::elongationPct).map(SplitGround::elongation).orElse("Elongation not known");
    return new SplitGround(shop, elongation + ". Edge factors: " + factors(shop) + ".");
  }

  double factor(EdgeCondition edge) {
    return shop.of(ShopValue.of(edge)).value();
  }

  private static String elongation(Sourced known) {
    return String.format(Locale.ROOT, "Elongation %.1f %%: %s", known.value(), known.said());
  }

  private static String factors(ShopValues shop) {
    Sourced polished = shop.of(ShopValue.POLISHED_EDGE);
    Sourced burred = shop.of(ShopValue.BURRED_EDGE);
    return polished.source().equals(burred.source())
        ? polished.source()
        : "polished, " + polished.source() + "; burred, " + burred.source();
  }
}
