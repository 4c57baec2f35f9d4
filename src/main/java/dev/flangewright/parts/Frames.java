package dev.flangewright.parts;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

/** All frames. */
public interface Frames extends JpaRepository<Frame, Long> {

  List<Frame> findByBuildId(long buildId);

  Optional<Frame> findByBuildIdAndCode(long buildId, String code);
}
