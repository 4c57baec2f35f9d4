package dev.flangewright.parts;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

/** All parts. */
public interface Parts extends JpaRepository<Part, Long> {

  Optional<Part> findByBuildIdAndPartNumber(long buildId, String partNumber);
}
