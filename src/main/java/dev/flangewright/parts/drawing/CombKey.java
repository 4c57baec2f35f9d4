package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Scale;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import java.util.List;
import java.util.Objects;

/** What a tooth's length and side mean, and the limit where there is one. */
record CombKey(Box field, List<Comb> combs) {

  void draw(Svg svg) {
    Comb comb = combs.get(0);
    double strain = Scale.roundStep(comb.deepest() / 4);
    double length = strain * comb.mmPerStrain() * comb.fit().scale();
    double y = field.maxY() + 78;
    Spot foot = new Spot(field.minX(), y + 6);
    svg.path("d-tooth", Lines.open(foot, new Spot(foot.x(), foot.y() - length)));
    svg.label(
        new Spot(foot.x() + 14, y + 6),
        Anchor.START,
        Numbers.figure(strain * 100, strain < 0.01 ? 1 : 0)
            + " % strain: outward shrink, inward stretch");
    limit(svg, y + 34);
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
      svg.path(
          "d-limit", Lines.open(new Spot(field.minX() - 12, y), new Spot(field.minX() + 6, y)));
    }
    svg.label(
        new Spot(field.minX() + 14, y + 6),
        Anchor.START,
        "Split limit " + Numbers.percent(lowest) + (drawn ? "" : ", well clear of the teeth"));
  }
}
