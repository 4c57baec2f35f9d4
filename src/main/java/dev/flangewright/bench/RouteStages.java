package dev.flangewright.bench;

import dev.flangewright.parts.Build;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

/** The stages of all routes. */
public interface RouteStages extends JpaRepository<RouteStage, Long> {

  /** The build whose route is to be changed; locked, so that two editors take turns. */
  @Lock(LockModeType.PESSIMISTIC_WRITE)
  @Query("select b from Build b where b.id = :buildId")
  Optional<Build> findBuildToChange(long buildId);

  List<RouteStage> findByBuildIdOrderBySeq(long buildId);
}
