package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Scale;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import java.util.List;
import java.util.Objects;

/** What a tooth's length and side mean, and the limit where there is one. */
record CombKey(double foot, List<Comb> combs) {

  private static final double LEFT = 108;

  void draw(Svg svg) {
    if (combs.stream().allMatch(comb -> comb.edge().peak() == 0)) {
      return;
    }
    Comb comb = combs.get(0);
    double strain = Scale.roundStep(comb.deepest() / 4);
    double length = strain * comb.mmPerStrain() * comb.fit().scale();
    double y = foot + 62;
    Spot stand = new Spot(LEFT, y + 6);
    svg.path("d-tooth", Lines.open(stand, new Spot(stand.x(), stand.y() - length)));
    svg.label(
        new Spot(LEFT + 14, y + 6),
        Anchor.START,
        Numbers.figure(strain * 100, strain < 0.01 ? 1 : 0)
            + " % strain: outward shrink, inward stretch");
    limit(svg, y + 33);
  }

  private void limit(Svg svg, double y) {
    Double lowest =
        combs.stream()
            .filter(comb -> comb.edge().mostStretch() > 0)
            .map(comb -> comb.edge().splitLimit())
            .filter(Objects::nonNull)
            .min(Double::compare)
            .orElse(null);
    if (lowest == null) {
      return;
    }
    boolean drawn = lowest <= combs.get(0).deepest();
    if (drawn) {
      svg.path("d-limit", Lines.open(new Spot(LEFT - 12, y), new Spot(LEFT + 6, y)));
    }
    svg.label(
        new Spot(LEFT + 14, y + 6),
        Anchor.START,
        "Split limit " + Numbers.percent(lowest) + (drawn ? "" : ", well clear of the teeth"));
  }
}
