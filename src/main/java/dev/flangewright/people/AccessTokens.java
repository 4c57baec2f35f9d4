package dev.flangewright.people;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;

/** All tokens, those that are no longer good included. */
interface AccessTokens extends JpaRepository<AccessToken, Long> {

  @EntityGraph(attributePaths = "account")
  Optional<AccessToken> findByDigest(String digest);

  @EntityGraph(attributePaths = "account")
  List<AccessToken> findByAccountUsernameOrderByMadeAtDesc(String username);
}
