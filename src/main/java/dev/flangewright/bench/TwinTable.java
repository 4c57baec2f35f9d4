package dev.flangewright.bench;

import dev.flangewright.parts.Hand;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The other hands of a whole build, by the same rule as {@link Twins}. */
final class TwinTable {

  private final Map<Long, PartLine> twins = new HashMap<>();

  private record Place(String frame, String segment) {}

  TwinTable(List<PartLine> parts) {
    parts.stream()
        .filter(part -> !part.segment().isEmpty())
        .collect(Collectors.groupingBy(part -> new Place(part.frame(), part.segment())))
        .values()
        .forEach(this::pair);
  }

  private void pair(List<PartLine> inOnePlace) {
    List<PartLine> left = hands(inOnePlace, Hand.LEFT);
    List<PartLine> right = hands(inOnePlace, Hand.RIGHT);
    if (left.size() == 1 && right.size() == 1) {
      twins.put(left.get(0).id(), right.get(0));
      twins.put(right.get(0).id(), left.get(0));
    }
  }

  private static List<PartLine> hands(List<PartLine> parts, Hand hand) {
    return parts.stream().filter(part -> part.hand() == hand).toList();
  }

  Optional<PartLine> of(PartLine part) {
    return Optional.ofNullable(twins.get(part.id()));
  }
}
