package dev.flangewright.blocks;

import dev.flangewright.parts.Part;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All block sets. */
public interface BlockSets extends JpaRepository<BlockSet, Long> {

  List<BlockSet> findByBuildId(long buildId);

  Optional<BlockSet> findByBuildIdAndCode(long buildId, String code);

  /** A set with its build and blocks, in one statement. */
  @EntityGraph(attributePaths = {"build", "blocks"})
  Optional<BlockSet> findWholeById(long id);

  /** The parts of a build that name a block set, by part number. */
  @Query(
      "select new dev.flangewright.blocks.PartOfSet(p.id, p.partNumber, p.hand, p.blockSet)"
          + " from Part p where p.build.id = :buildId and p.blockSet <> '' order by p.partNumber")
  List<PartOfSet> partsOfBuild(long buildId);

  /** The parts that name one set, their flanges with them, by part number. */
  @Query(
      "select distinct p from Part p left join fetch p.flanges"
          + " where p.build.id = :buildId and p.blockSet = :code order by p.partNumber")
  List<Part> partsOf(long buildId, String code);
}
