package dev.flangewright.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import org.springframework.http.HttpHeaders;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.web.filter.OncePerRequestFilter;

/** Reads {@code Authorization: Bearer TOKEN} (RFC 6750) at the door of the API. */
class TokenDoor extends OncePerRequestFilter {

  private static final String BEARER = "Bearer ";
  private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");

  private final TokenSignIn tokens;
  private final ApiDoor door;

  TokenDoor(TokenSignIn tokens, ApiDoor door) {
    this.tokens = tokens;
    this.door = door;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    String header = request.getHeader(HttpHeaders.AUTHORIZATION);
    if (header == null || !header.regionMatches(true, 0, BEARER, 0, BEARER.length())) {
      chain.doFilter(request, response);
      return;
    }
    boolean reading = READING.contains(request.getMethod());
    Optional<Authentication> signedIn =
        tokens.signIn(header.substring(BEARER.length()).strip(), reading);
    if (signedIn.isEmpty()) {
      door.commence(request, response, new BadCredentialsException("The token lets nobody in"));
      return;
    }
    SecurityContextHolder.setContext(new SecurityContextImpl(signedIn.get()));
    chain.doFilter(request, response);
  }
}
