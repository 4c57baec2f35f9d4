package dev.flangewright.overview;

import dev.flangewright.bench.Piece;
import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** What the wall board reads of a build, each in one statement. */
interface WallLines extends Repository<Piece, Long> {

  /** The pieces in work, those begun last first. */
  @Query(
      """
      select new dev.flangewright.overview.WallPiece(
          p.id, t.partNumber, p.number, s.card.name, s.card.kind,
          p.standing.currentStageBegun, p.standing.held, s.startedBy, s.startedAt)
      from Piece p join p.part t
      left join PieceStage s on s.piece = p and s.code = p.standing.currentStageCode
      where p.buildId = :build and p.state = dev.flangewright.bench.PieceState.IN_WORK
      order by s.startedAt desc, p.id
      """)
  List<WallPiece> inWork(long build);

  /** The lines that came in last, the newest first. */
  @Query(
      """
      select new dev.flangewright.overview.WallEntry(
          t.partNumber, p.number, e.who, e.action, e.stageName, e.undone, e.doneAt)
      from StageEntry e join e.piece p join p.part t
      where p.buildId = :build
      order by e.id desc
      """)
  List<WallEntry> lastLogged(long build, Limit most);

  @Query(
      """
      select new dev.flangewright.overview.FramePieces(f.id, count(t.id))
      from Part t join t.frame f where t.build.id = :build group by f.id
      """)
  List<FramePieces> partsOfFrames(long build);

  @Query(
      """
      select new dev.flangewright.overview.FramePieces(f.id, count(distinct t.id))
      from Piece p join p.part t join t.frame f
      where p.buildId = :build and p.state in (
          dev.flangewright.bench.PieceState.ACCEPTED, dev.flangewright.bench.PieceState.CONCESSION)
      group by f.id
      """)
  List<FramePieces> passedOfFrames(long build);
}
