package dev.flangewright.people;

import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;

/** Who is acting. */
public final class SignedIn {

  /** No account can be called so: names begin with a letter or a digit. */
  public static final String SYSTEM = "(system)";

  private SignedIn() {}

  /**
   * @return the account name of whoever acts now
   * @throws AuthenticationCredentialsNotFoundException if nobody is signed in
   */
  public static String name() {
    return authentication().getName();
  }

  /**
   * @return the account name of whoever acts now; {@link #SYSTEM} where nobody does, as in work of
   *     the program's own and before anybody has signed in
   */
  public static String nameOrSystem() {
    Authentication now = SecurityContextHolder.getContext().getAuthentication();
    return now == null || now instanceof AnonymousAuthenticationToken ? SYSTEM : now.getName();
  }

  public static boolean may(Permission permission) {
    return has(permission.name());
  }

  public static boolean isCleared(Clearance clearance) {
    return has(clearance.authority());
  }

  private static boolean has(String authority) {
    return authentication().getAuthorities().stream()
        .anyMatch(granted -> authority.equals(granted.getAuthority()));
  }

  /** Runs the work as the named account with all that its role usually has, then goes back. */
  public static void as(String username, Role role, Runnable work) {
    SecurityContext before = SecurityContextHolder.getContext();
    try {
      SecurityContext context = SecurityContextHolder.createEmptyContext();
      context.setAuthentication(
          UsernamePasswordAuthenticationToken.authenticated(
              username, "", AuthorityUtils.createAuthorityList(role.authorities())));
      SecurityContextHolder.setContext(context);
      work.run();
    } finally {
      SecurityContextHolder.setContext(before);
    }
  }

  private static Authentication authentication() {
    Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
    if (authentication == null) {
      throw new AuthenticationCredentialsNotFoundException("Nobody is signed in");
    }
    return authentication;
  }
}
