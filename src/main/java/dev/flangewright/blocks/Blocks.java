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

  /** The blocks of the set that a part names, as lists read them. */
  @Query(
      "select new dev.flangewright.blocks.BlockLine(b.id, s.code, b.kind, b.formingStage,"
          + " b.condition) from Block b join b.blockSet s"
          + " join Part p on p.build = s.build and p.blockSet = s.code"
          + " where p.id = :partId order by b.id")
  List<BlockLine> ofPart(long partId);

  @EntityGraph(attributePaths = "blockSet.build")
  Optional<Block> findWithSetById(long id);
}
