package dev.flangewright.bench;

import java.time.Instant;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import org.springframework.data.repository.query.Param;

/** What lists read of a whole build, each in one statement. */
interface BenchLines extends Repository<Piece, Long> {

  @Query(
      """
      select new dev.flangewright.bench.PieceLine(
          p.id, p.part.id, p.number, p.state, p.standing.stagesDone, p.standing.stagesTotal,
          s.card, p.standing.currentStageBegun, s.startedBy, p.standing.held, p.standing.logLines)
      from Piece p
      left join PieceStage s on s.piece = p and s.code = p.standing.currentStageCode
      where p.buildId = :build
      order by p.number
      """)
  List<PieceLine> piecesOf(@Param("build") long buildId);

  @Query(
      """
      select new dev.flangewright.bench.PartLine(
          p.id, p.partNumber, f.code, f.positionMm, f.jigOrder, p.segment, p.hand, p.blockSet,
          p.alloy, p.temper, p.thickness,
          p.summary.riskLevel, p.summary.riskMode, p.summary.figuresProblem)
      from Part p join p.frame f
      where p.build.id = :build
      """)
  List<PartLine> partsOf(@Param("build") long buildId);

  @Query(
      """
      select new dev.flangewright.bench.NatureLine(p.id, p.temper, f.kind)
      from Part p left join p.flanges f
      where p.build.id = :build
      order by p.id, f.registerOrder
      """)
  List<NatureLine> naturesOf(@Param("build") long buildId);

  /** Work over a block that lies begun, or that was finished since the given time. */
  @Query(
      """
      select new dev.flangewright.bench.SetUpLine(
          p.part.id, p.part.blockSet, s.card.needsBlock, s.card.blockStage,
          s.startedBy, s.startedAt, s.finishedAt)
      from PieceStage s join s.piece p
      where p.buildId = :build and s.card.needsBlock is not null and s.startedAt is not null
        and (s.finishedAt >= :since
          or (s.finishedAt is null and p.state = dev.flangewright.bench.PieceState.IN_WORK))
      """)
  List<SetUpLine> setUpsOf(@Param("build") long buildId, @Param("since") Instant since);

  @Query(
      """
      select new dev.flangewright.bench.PassOnLine(
          o.partId, o.who, o.pieceNumber, o.logLines, o.reason)
      from PassOn o
      where o.buildId = :build and o.passedAt >= :since
      order by o.who
      """)
  List<PassOnLine> passedOnIn(@Param("build") long buildId, @Param("since") Instant since);
}
