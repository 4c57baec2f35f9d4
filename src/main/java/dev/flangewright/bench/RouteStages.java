package dev.flangewright.bench;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

/** The stages of all routes. */
public interface RouteStages extends JpaRepository<RouteStage, Long> {

  List<RouteStage> findByBuildIdOrderBySeq(long buildId);
}
