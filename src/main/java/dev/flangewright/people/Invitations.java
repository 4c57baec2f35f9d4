package dev.flangewright.people;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

/** All invitations, used and expired ones included. */
interface Invitations extends JpaRepository<Invitation, Long> {

  Optional<Invitation> findByDigest(String digest);

  List<Invitation> findByUsedAtIsNullAndEndedAtIsNullAndExpiresAtAfterOrderByMadeAtDesc(
      Instant now);
}
