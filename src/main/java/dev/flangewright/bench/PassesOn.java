package dev.flangewright.bench;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

/** All that people have passed on; the latest word of each person on each part. */
interface PassesOn extends JpaRepository<PassOn, Long> {

  Optional<PassOn> findByPartIdAndWho(long partId, String who);
}
