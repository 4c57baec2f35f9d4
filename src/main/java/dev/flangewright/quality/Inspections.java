package dev.flangewright.quality;

import java.util.List;
import org.springframework.data.domain.Pageable;
import org.springframework.data.domain.Slice;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All inspections. */
public interface Inspections extends JpaRepository<Inspection, Long> {

  @EntityGraph(attributePaths = {"cause"})
  List<Inspection> findByPieceIdOrderById(long pieceId);

  @EntityGraph(attributePaths = {"cause", "piece"})
  List<Inspection> findByPiecePartIdOrderByIdDesc(long partId);

  @EntityGraph(attributePaths = {"cause", "piece.part"})
  List<Inspection> findByBuildIdOrderByIdDesc(long buildId);

  /** Newest first, as they are said to have been done. */
  @EntityGraph(attributePaths = {"cause", "piece.part"})
  Slice<Inspection> findByBuildIdOrderByDoneAtDescIdDesc(long buildId, Pageable page);

  @Query(
      """
      select new dev.flangewright.quality.ScrapTally(
          c.code, c.name, count(distinct i.id), coalesce(sum(e.hours), 0.0))
      from Inspection i join i.cause c
      left join StageEntry e on e.piece = i.piece and e.undone = false
      where i.buildId = :buildId and i.outcome = :scrap
      group by c.code, c.name
      order by count(distinct i.id) desc, c.name
      """)
  List<ScrapTally> tallyScrap(long buildId, Outcome scrap);

  @Query(
      """
      select new dev.flangewright.quality.OutcomeCount(i.outcome, count(i))
      from Inspection i
      where i.buildId = :buildId
      group by i.outcome
      """)
  List<OutcomeCount> countOutcomes(long buildId);
}
