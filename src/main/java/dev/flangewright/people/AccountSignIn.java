package dev.flangewright.people;

import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Looks an account up for sign-in, with one authority for each permission of its role and each of
 * its clearances.
 */
@Service
class AccountSignIn {

  private final Accounts accounts;

  AccountSignIn(Accounts accounts) {
    this.accounts = accounts;
  }

  @Transactional(readOnly = true)
  public UserDetails loadUserByUsername(String username) {
    Account account =
        accounts
            .findByUsername(username)
            .orElseThrow(() -> UsernameNotFoundException.fromUsername(username));
    String[] authorities = Authorities.of(account.role().permissions(), account.clearances());
    return User.withUsername(account.username())
        .password(account.passwordHash())
        .disabled(!account.enabled())
        .authorities(AuthorityUtils.createAuthorityList(authorities))
        .build();
  }
}
