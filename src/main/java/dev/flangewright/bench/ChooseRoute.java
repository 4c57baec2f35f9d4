package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Chooses which route parts take. Pieces already begun stay on the route they began on. */
@Service
@Transactional
public class ChooseRoute {

  private final Routes routes;
  private final RouteChoices choices;
  private final Parts parts;

  ChooseRoute(Routes routes, RouteChoices choices, Parts parts) {
    this.routes = routes;
    this.choices = choices;
    this.parts = parts;
  }

  /** Makes a route the usual one of all parts of a nature. */
  @MayEditRegister
  public void usual(long buildId, PartNature nature, String routeName) {
    refuseUnlessReleased(buildId, routeName);
    choices
        .findByBuildIdAndNature(buildId, nature)
        .ifPresentOrElse(
            choice -> choice.isNow(routeName),
            () -> choices.save(RouteChoice.of(buildId, nature, routeName)));
  }

  /**
   * Chooses a route for these parts, whatever their nature.
   *
   * @param routeName empty to let the nature decide again
   * @return how many parts were named
   * @throws Refused if the build has no such part or no released route of that name; then nothing
   *     is stored
   */
  @MayEditRegister
  public int forParts(long buildId, List<String> partNumbers, String routeName) {
    List<Part> chosen = partNumbers.stream().map(number -> part(buildId, number)).toList();
    if (chosen.isEmpty()) {
      throw Refused.unacceptable("parts are missing: name at least one part number.");
    }
    if (!routeName.isEmpty()) {
      refuseUnlessReleased(buildId, routeName);
    }
    chosen.forEach(part -> choose(buildId, part.id(), routeName));
    return chosen.size();
  }

  private void choose(long buildId, long partId, String routeName) {
    Optional<RouteChoice> before = choices.findByPartId(partId);
    if (routeName.isEmpty()) {
      before.ifPresent(choices::delete);
    } else {
      before.ifPresentOrElse(
          choice -> choice.isNow(routeName),
          () -> choices.save(RouteChoice.ofPart(buildId, partId, routeName)));
    }
  }

  private Part part(long buildId, String number) {
    return parts
        .findByBuildIdAndPartNumber(buildId, number)
        .orElseThrow(() -> Refused.unacceptable("part \"" + number + "\" is not in the register."));
  }

  private void refuseUnlessReleased(long buildId, String name) {
    if (routes
        .findFirstByBuildIdAndNameAndStateOrderByNumberDesc(buildId, name, RouteState.RELEASED)
        .isEmpty()) {
      throw Refused.unacceptable(
          "route \"" + name + "\" has no released version. Release one first.");
    }
  }
}
