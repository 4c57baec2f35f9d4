package dev.flangewright.materials;

import jakarta.persistence.QueryHint;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.jpa.repository.QueryHints;

/** All metals that builds have entered. */
interface OwnMetals extends JpaRepository<OwnMetal, Long> {

  /** Those of a build, withdrawn ones too, by name and thickness, the newest last. */
  @Query(
      "select m from OwnMetal m where m.buildId = :buildId"
          + " order by m.alloy, m.temper, m.fromThicknessMm, m.enteredAt, m.id")
  List<OwnMetal> ofBuild(long buildId);

  /** Read for every part that is figured: it must not make Hibernate look for changes first. */
  @Query("select m from OwnMetal m where m.buildId = :buildId and m.withdrawnAt is null")
  @QueryHints(@QueryHint(name = "org.hibernate.flushMode", value = "COMMIT"))
  List<OwnMetal> inForce(long buildId);
}
