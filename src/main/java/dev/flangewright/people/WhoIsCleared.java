package dev.flangewright.people;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Names the people who are cleared for a sort of work. */
@Service
public class WhoIsCleared {

  private final Accounts accounts;

  WhoIsCleared(Accounts accounts) {
    this.accounts = accounts;
  }

  /** The names of the open accounts with this clearance, in their order. */
  @Transactional(readOnly = true)
  public List<String> namesFor(Clearance clearance) {
    return accounts.namesClearedFor(clearance);
  }

  /** The same for every clearance that somebody has, in one statement. */
  @Transactional(readOnly = true)
  public Map<Clearance, List<String>> names() {
    return accounts.clearedNames().stream()
        .collect(
            Collectors.groupingBy(
                ClearedName::clearance,
                () -> new EnumMap<>(Clearance.class),
                Collectors.mapping(ClearedName::username, Collectors.toList())));
  }
}
