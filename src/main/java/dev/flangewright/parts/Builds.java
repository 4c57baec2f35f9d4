package dev.flangewright.parts;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

/** All builds. */
public interface Builds extends JpaRepository<Build, Long> {

  Optional<Build> findByName(String name);

  List<Build> findAllByOrderByName();
}
