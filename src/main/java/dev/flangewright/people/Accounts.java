package dev.flangewright.people;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All accounts. */
interface Accounts extends JpaRepository<Account, Long> {

  Optional<Account> findByUsername(String username);

  List<Account> findAllByOrderByUsername();

  long countByRoleAndEnabledTrue(Role role);

  @Query(
      "select a.username from Account a where a.enabled and :clearance member of a.clearances"
          + " order by a.username")
  List<String> namesClearedFor(Clearance clearance);

  @Query(
      "select new dev.flangewright.people.ClearedName(c, a.username)"
          + " from Account a join a.clearances c where a.enabled order by a.username")
  List<ClearedName> clearedNames();
}
