package dev.flangewright.parts;

import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;

/** All parts. */
public interface Parts extends JpaRepository<Part, Long> {

  Optional<Part> findByBuildIdAndPartNumber(long buildId, String partNumber);

  /** A page of a build's parts, their frames with them. */
  @EntityGraph(attributePaths = "frame")
  Page<Part> findByBuildId(long buildId, Pageable page);
}
