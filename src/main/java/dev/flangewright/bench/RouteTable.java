package dev.flangewright.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Which route the parts of a build take, looked up in what was read of the build at once. */
final class RouteTable {

  private final Map<String, Route> newest;
  private final Map<Long, String> ofParts = new HashMap<>();
  private final Map<PartNature, String> usual = new HashMap<>();

  /**
   * @param versions the newest of a name before the older ones
   */
  RouteTable(List<Route> versions, List<RouteChoice> choices) {
    newest =
        versions.stream()
            .filter(route -> !route.isDraft())
            .collect(Collectors.toMap(Route::name, route -> route, (newer, older) -> newer));
    choices.forEach(this::note);
  }

  private void note(RouteChoice choice) {
    Optional.ofNullable(choice.partId()).ifPresent(part -> ofParts.put(part, choice.routeName()));
    Optional.ofNullable(choice.nature()).ifPresent(n -> usual.put(n, choice.routeName()));
  }

  Optional<Route> of(long partId, PartNature nature) {
    return named(ofParts.get(partId)).or(() -> named(usual.get(nature)));
  }

  private Optional<Route> named(@Nullable String name) {
    return name == null ? Optional.empty() : Optional.ofNullable(newest.get(name));
  }
}
