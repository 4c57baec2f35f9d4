package dev.flangewright.bench;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

/** Which parts take which route. */
interface RouteChoices extends JpaRepository<RouteChoice, Long> {

  List<RouteChoice> findByBuildId(long buildId);

  Optional<RouteChoice> findByBuildIdAndNature(long buildId, PartNature nature);

  Optional<RouteChoice> findByPartId(long partId);
}
