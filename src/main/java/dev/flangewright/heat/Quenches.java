package dev.flangewright.heat;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All quenches. */
interface Quenches extends JpaRepository<Quench, Long> {

  /** The last quench of each piece of a build, with its time in the freezer. */
  @Query(
      """
      select distinct q from Quench q left join fetch q.stays
      where q.buildId = :buildId and not q.takenBack
        and not exists (
          select 1 from Quench later
          where later.pieceId = q.pieceId and not later.takenBack
            and later.quenchedAt > q.quenchedAt)
      """)
  List<Quench> lastOfEachPiece(long buildId);

  Optional<Quench> findFirstByPieceIdAndTakenBackFalseOrderByQuenchedAtDesc(long pieceId);

  List<Quench> findByPieceIdOrderByQuenchedAt(long pieceId);
}
