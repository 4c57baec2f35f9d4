package dev.flangewright.bench;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All pieces. */
public interface Pieces extends JpaRepository<Piece, Long> {

  List<Piece> findByPartIdOrderByNumber(long partId);

  @Query("select coalesce(max(p.number), 0) from Piece p where p.part.id = :partId")
  int highestNumber(long partId);

  boolean existsByPartIdAndState(long partId, PieceState state);
}
