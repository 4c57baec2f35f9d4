package dev.flangewright.stock;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All batches. */
public interface Batches extends JpaRepository<Batch, Long> {

  /** Every batch of a build as lists read it, in the order in which they were recorded. */
  @Query(
      "select new dev.flangewright.stock.BatchLine(b.id, b.mark, b.alloy, b.temper,"
          + " b.thicknessMm, b.heatNumber, b.condition) from Batch b"
          + " where b.build.id = :buildId order by b.id")
  List<BatchLine> ofBuild(long buildId);

  List<Batch> findByBuildIdOrderById(long buildId);

  Optional<Batch> findByBuildIdAndMark(long buildId, String mark);

  boolean existsByBuildIdAndMarkIgnoreCase(long buildId, String mark);

  @EntityGraph(attributePaths = {"build", "changes"})
  Optional<Batch> findWholeById(long id);
}
