package dev.flangewright.overview;

import dev.flangewright.bench.Piece;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import org.springframework.data.repository.query.Param;

/** How many parts of a build have come through each stage, in one statement. */
interface StageTallies extends Repository<Piece, Long> {

  @Query(
      """
      select new dev.flangewright.overview.StageTally(s.code,
          count(distinct case when s.finishedAt is not null then p.part.id end),
          sum(case when p.standing.currentStageCode = s.code and p.standing.currentStageBegun
              and not p.standing.held then 1 else 0 end),
          sum(case when p.standing.currentStageCode = s.code and p.standing.held
              then 1 else 0 end))
      from PieceStage s join s.piece p
      where p.buildId = :build and p.state <> dev.flangewright.bench.PieceState.SCRAPPED
      group by s.code
      """)
  List<StageTally> ofBuild(@Param("build") long buildId);
}
