package dev.flangewright.people;

import java.util.List;
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
}
