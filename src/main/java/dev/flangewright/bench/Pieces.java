package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

/** All pieces. */
public interface Pieces extends JpaRepository<Piece, Long> {

  /**
   * A piece to be changed. Its row is locked, so that of two people logging at once the second
   * waits, and then sees what the first has done instead of clashing with it.
   */
  @Lock(LockModeType.PESSIMISTIC_WRITE)
  @Query("select p from Piece p where p.id = :id")
  Optional<Piece> findToChange(long id);

  /** A part of which a piece is to be begun; locked, so that two people do not begin the same. */
  @Lock(LockModeType.PESSIMISTIC_WRITE)
  @Query("select p from Part p where p.id = :partId")
  Optional<Part> findPartToBegin(long partId);

  @EntityGraph(attributePaths = {"part.build", "part.frame"})
  Optional<Piece> findWithPartById(long id);

  /** How many pieces were cut from each batch of a build: batch id, count. */
  @Query(
      "select p.batch.id, count(p) from Piece p where p.buildId = :buildId and p.batch is not null"
          + " group by p.batch.id")
  List<Object[]> countByBatch(long buildId);

  @Query(
      "select p from Piece p join fetch p.part t where p.batch.id = :batchId"
          + " order by t.partNumber, p.number")
  List<Piece> cutFrom(long batchId);

  List<Piece> findByPartIdOrderByNumber(long partId);

  @Query("select coalesce(max(p.number), 0) from Piece p where p.part.id = :partId")
  int highestNumber(long partId);

  boolean existsByPartIdAndState(long partId, PieceState state);
}
