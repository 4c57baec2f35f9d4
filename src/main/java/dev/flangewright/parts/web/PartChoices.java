package dev.flangewright.parts.web;

import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.HoleKind;
import dev.flangewright.forming.Practice;
import dev.flangewright.materials.KeepShopValues;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.Frame;
import dev.flangewright.parts.Frames;
import dev.flangewright.parts.Hand;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.YAxis;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** What the forms of the register offer to choose from: value to words, in order of showing. */
@Component
class PartChoices {

  static final Map<String, String> HANDS = of(Arrays.stream(Hand.values()), Hand::word, Hand::word);

  static final Map<String, String> KINDS =
      of(Arrays.stream(FlangeKind.values()), FlangeKind::label, FlangeKind::label);

  static final Map<String, String> HOLES =
      of(Arrays.stream(HoleKind.values()), HoleKind::name, HoleKind::label);

  static final Map<String, String> Y_AXES =
      of(Arrays.stream(YAxis.values()), YAxis::name, YAxis::words);

  private final Frames frames;
  private final KeepShopValues shop;

  PartChoices(Frames frames, KeepShopValues shop) {
    this.frames = frames;
    this.shop = shop;
  }

  /** Each with the factor by which it lowers the split limit in a build. */
  Map<String, String> edges(long buildId) {
    Practice practice = shop.of(buildId).practice();
    return of(
        Arrays.stream(EdgeCondition.values()),
        EdgeCondition::name,
        edge ->
            String.format(
                Locale.ROOT, "%s (factor %.2f)", edge.label(), practice.edgeFactor(edge)));
  }

  /** The frames of a build by their position along the hull. */
  Map<String, String> frames(long buildId) {
    return of(
        frames.findByBuildId(buildId).stream()
            .sorted(Comparator.comparingDouble(frame -> frame.positionMm().value())),
        Frame::code,
        frame -> frame.code() + ", at " + frame.positionMm() + " mm");
  }

  /** The flanges of a part, in the order of the drawing. */
  static Map<String, String> flanges(Part part) {
    return of(part.flanges().stream(), Flange::name, Flange::name);
  }

  private static <T> Map<String, String> of(
      Stream<T> things, Function<T, String> value, Function<T, String> words) {
    return things.collect(Collectors.toMap(value, words, (one, other) -> one, LinkedHashMap::new));
  }
}
