package dev.flangewright.parts;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All flanges. */
public interface Flanges extends JpaRepository<Flange, Long> {

  /** The highest place of a flange in the build's files; 0 if there is none. */
  @Query(
      "select coalesce(max(greatest(f.registerOrder, f.contourOrder)), 0) from Flange f"
          + " where f.part.build.id = :buildId")
  int lastOrder(long buildId);

  /** Every flange of a build as the register shows it, part by part in the order of the drawing. */
  @Query(
      "select new dev.flangewright.parts.RegisterFlange(f.part.id, f.name, f.kind,"
          + " f.summary.peakEdgeStrain, f.summary.gatherMm)"
          + " from Flange f where f.part.build.id = :buildId order by f.part.id, f.registerOrder")
  List<RegisterFlange> register(long buildId);
}
