package dev.flangewright.bench;

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
          s.card.name, s.card.kind, p.standing.currentStageBegun, p.standing.held)
      from Piece p
      left join PieceStage s on s.piece = p and s.code = p.standing.currentStageCode
      where p.buildId = :build
      order by p.number
      """)
  List<PieceLine> piecesOf(@Param("build") long buildId);

  @Query(
      """
      select new dev.flangewright.bench.PartLine(
          p.id, p.partNumber, f.code, f.positionMm, p.blockSet,
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
}
