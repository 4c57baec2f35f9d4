package dev.flangewright.blocks;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All blocks. */
public interface Blocks extends JpaRepository<Block, Long> {

  /** Every block of a build as lists read it. */
  @Query(
      "select new dev.flangewright.blocks.BlockLine(b.id, s.code, b.kind, b.formingStage,"
          + " b.condition) from Block b join b.blockSet s where s.build.id = :buildId"
          + " order by b.id")
  List<BlockLine> ofBuild(long buildId);

  /** The blocks of one set as lists read them. */
  @Query(
      "select new dev.flangewright.blocks.BlockLine(b.id, s.code, b.kind, b.formingStage,"
          + " b.condition) from Block b join b.blockSet s"
          + " where s.build.id = :buildId and s.code = :code order by b.id")
  List<BlockLine> ofSet(long buildId, String code);

  @EntityGraph(attributePaths = "blockSet.build")
  Optional<Block> findWithSetById(long id);
}
