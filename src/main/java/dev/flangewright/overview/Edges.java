package dev.flangewright.overview;

import dev.flangewright.parts.Flange;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import org.springframework.data.repository.query.Param;

/** Contours, each list in one statement. */
interface Edges extends Repository<Flange, Long> {

  /** The thinned-out contours of a whole build. */
  @Query(
      "select new dev.flangewright.overview.EdgeLine(f.part.id, f.summary.sketch) from Flange f"
          + " where f.part.build.id = :build order by f.part.id, f.registerOrder")
  List<EdgeLine> ofBuild(@Param("build") long buildId);

  /** The whole contours of one frame's flanges. */
  @Query(
      "select new dev.flangewright.overview.ContourLine(f.part.id, f.stations) from Flange f"
          + " where f.part.frame.id = :frame order by f.part.id, f.registerOrder")
  List<ContourLine> ofFrame(@Param("frame") long frameId);
}
