package dev.flangewright.parts;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All builds. */
public interface Builds extends JpaRepository<Build, Long> {

  Optional<Build> findByName(String name);

  List<Build> findAllByOrderByName();

  /** Every build with its counts, by name, in one statement. */
  @Query(
      "select new dev.flangewright.parts.BuildLine(b.id, b.name, b.note,"
          + " (select count(f) from Frame f where f.build = b),"
          + " (select count(p) from Part p where p.build = b)) from Build b order by b.name")
  List<BuildLine> lines();
}
