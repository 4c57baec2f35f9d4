package dev.flangewright.quality;

import java.util.List;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;

/** All inspections. */
public interface Inspections extends JpaRepository<Inspection, Long> {

  @EntityGraph(attributePaths = {"cause"})
  List<Inspection> findByPieceIdOrderById(long pieceId);

  @EntityGraph(attributePaths = {"cause", "piece.part"})
  List<Inspection> findByBuildIdOrderByIdDesc(long buildId);
}
