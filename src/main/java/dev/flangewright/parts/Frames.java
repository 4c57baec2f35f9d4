package dev.flangewright.parts;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All frames. */
public interface Frames extends JpaRepository<Frame, Long> {

  List<Frame> findByBuildId(long buildId);

  Optional<Frame> findByBuildIdAndCode(long buildId, String code);

  /** Every frame of a build with its count of parts, in no order, in one statement. */
  @Query(
      "select new dev.flangewright.parts.FrameLine(f.id, f.code, f.positionMm, f.jigOrder,"
          + " (select count(p) from Part p where p.frame = f)) from Frame f"
          + " where f.build.id = :buildId")
  List<FrameLine> lines(long buildId);
}
