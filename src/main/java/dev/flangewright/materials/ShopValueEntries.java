package dev.flangewright.materials;

import jakarta.persistence.QueryHint;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.jpa.repository.QueryHints;

/** Everything that builds ever set or took back of their shop values. */
interface ShopValueEntries extends JpaRepository<ShopValueEntry, Long> {

  /** Of a build, the newest first. */
  @Query(
      "select e from ShopValueEntry e where e.buildId = :buildId order by e.enteredAt desc, e.id desc")
  List<ShopValueEntry> ofBuild(long buildId);

  /** Read for every part that is figured: it must not make Hibernate look for changes first. */
  @Query(
      "select e from ShopValueEntry e where e.buildId = :buildId and e.ordinal ="
          + " (select max(o.ordinal) from ShopValueEntry o"
          + " where o.buildId = e.buildId and o.name = e.name)")
  @QueryHints(@QueryHint(name = "org.hibernate.flushMode", value = "COMMIT"))
  List<ShopValueEntry> inForce(long buildId);
}
