package dev.flangewright.overview;

import dev.flangewright.parts.Flange;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import org.springframework.data.repository.query.Param;

/** The thinned-out contours of a whole build, in one statement. */
interface Edges extends Repository<Flange, Long> {

  @Query(
      "select new dev.flangewright.overview.EdgeLine(f.part.id, f.summary.sketch) from Flange f"
          + " where f.part.build.id = :build order by f.part.id, f.registerOrder")
  List<EdgeLine> ofBuild(@Param("build") long buildId);
}
