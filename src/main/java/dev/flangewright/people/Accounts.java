package dev.flangewright.people;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;

/** All accounts. */
interface Accounts extends JpaRepository<Account, Long> {

  Optional<Account> findByUsername(String username);

  List<Account> findAllByOrderByUsername();

  long countByRoleAndEnabledTrue(Role role);
}
