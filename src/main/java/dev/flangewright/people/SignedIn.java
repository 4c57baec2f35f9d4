package dev.flangewright.people;

import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;

/** Who is acting. */
public final class SignedIn {

  private SignedIn() {}

  /**
   * @return the account name of whoever acts now
   * @throws AuthenticationCredentialsNotFoundException if nobody is signed in
   */
  public static String name() {
    return authentication().getName();
  }

  public static boolean may(Permission permission) {
    return authentication().getAuthorities().stream()
        .anyMatch(granted -> permission.name().equals(granted.getAuthority()));
  }

  /** Runs the work as the named account with its role's permissions, then goes back. */
  public static void as(String username, Role role, Runnable work) {
    SecurityContext before = SecurityContextHolder.getContext();
    try {
      SecurityContext context = SecurityContextHolder.createEmptyContext();
      String[] permissions = role.permissions().stream().map(Enum::name).toArray(String[]::new);
      context.setAuthentication(
          UsernamePasswordAuthenticationToken.authenticated(
              username, "", AuthorityUtils.createAuthorityList(permissions)));
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
