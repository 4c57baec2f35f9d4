package dev.flangewright.bench;

import dev.flangewright.parts.BuildMade;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.util.Arrays;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Gives a new build a route for each nature of part. */
@Component
class BuildRoutes {

  private final Routes routes;
  private final RouteChoices choices;
  private final Clock clock;

  BuildRoutes(Routes routes, RouteChoices choices, Clock clock) {
    this.routes = routes;
    this.choices = choices;
    this.clock = clock;
  }

  @EventListener
  void on(BuildMade made) {
    Arrays.stream(PartNature.values()).forEach(nature -> give(made.buildId(), nature));
  }

  private void give(long build, PartNature nature) {
    routes.save(RouteTemplates.route(nature, build, SignedIn.name(), clock.instant()));
    choices.save(RouteChoice.of(build, nature, RouteTemplates.nameFor(nature)));
  }
}
