package dev.flangewright.bench;

import java.util.List;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;

/** All gauge readings. */
public interface GaugeLogs extends JpaRepository<GaugeLog, Long> {

  @EntityGraph(attributePaths = "piece")
  List<GaugeLog> findByPieceIdOrderById(long pieceId);
}
