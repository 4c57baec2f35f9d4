package dev.flangewright.parts;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

/** All parts. */
public interface Parts extends JpaRepository<Part, Long> {

  Optional<Part> findByBuildIdAndPartNumber(long buildId, String partNumber);

  /** A page of a build's parts, their frames with them. */
  @EntityGraph(attributePaths = "frame")
  Page<Part> findByBuildId(long buildId, Pageable page);

  /** A part with its build, frame and flanges, in one statement. */
  @Query(
      "select p from Part p join fetch p.build join fetch p.frame left join fetch p.flanges"
          + " where p.id = :id")
  Optional<Part> whole(long id);

  /** At most 100 parts, by id, whose figures were summed up by an older model or are stale. */
  @Query(
      "select p.id from Part p where p.summary.figuresVersion < :version and p.id > :after"
          + " order by p.id limit 100")
  List<Long> idsOfOlderFigures(int version, long after);

  /** Marks the figures of a build as stale, so that they are summed up again. */
  @Modifying
  @Query("update versioned Part p set p.summary.figuresVersion = 0 where p.build.id = :buildId")
  void figuresAreStale(long buildId);

  /** Marks the figures of a build's parts of one metal as stale. */
  @Modifying
  @Query(
      "update versioned Part p set p.summary.figuresVersion = 0 where p.build.id = :buildId"
          + " and lower(p.alloy) = lower(:alloy) and lower(p.temper) = lower(:temper)")
  void figuresAreStale(long buildId, String alloy, String temper);

  /** Every part of a build as a line of the register, in no order. */
  @Query(
      "select new dev.flangewright.parts.RegisterPart(p.id, p.partNumber, f.code, f.positionMm,"
          + " p.segment, p.hand, p.drawing, p.alloy, p.temper, p.thickness, p.blockSet,"
          + " p.summary.figuresProblem, p.summary.riskMode, p.summary.riskLevel,"
          + " p.summary.riskUtilisation)"
          + " from Part p join p.frame f where p.build.id = :buildId")
  List<RegisterPart> register(long buildId);
}
