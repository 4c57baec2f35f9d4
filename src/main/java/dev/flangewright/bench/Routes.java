package dev.flangewright.bench;

import dev.flangewright.parts.Build;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

/** All versions of all routes. */
public interface Routes extends JpaRepository<Route, Long> {

  /** The build whose routes are to be changed; locked, so that two editors take turns. */
  @Lock(LockModeType.PESSIMISTIC_WRITE)
  @Query("select b from Build b where b.id = :buildId")
  Optional<Build> findBuildToChange(long buildId);

  /** A version that is to be changed; locked, so that two editors take turns. */
  @Lock(LockModeType.PESSIMISTIC_WRITE)
  @Query("select r from Route r where r.id = :id")
  Optional<Route> findToChange(long id);

  /** Every version of every route of a build with its stages, the newest of a route first. */
  @EntityGraph(attributePaths = "stages")
  List<Route> findByBuildIdOrderByNameAscNumberDesc(long buildId);

  Optional<Route> findFirstByBuildIdAndNameAndStateOrderByNumberDesc(
      long buildId, String name, RouteState state);

  boolean existsByBuildIdAndName(long buildId, String name);

  @Query("select max(r.number) from Route r where r.buildId = :buildId and r.name = :name")
  Optional<Integer> highestNumber(long buildId, String name);
}
