package dev.flangewright.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Set;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses a change that another site's page asks for through a browser which remembers HTTP Basic
 * credentials. Programs send no {@code Sec-Fetch-Site} header and are not touched.
 */
class CrossSiteRefusal extends OncePerRequestFilter {

  private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    String from = request.getHeader("Sec-Fetch-Site");
    boolean foreign = from != null && !Set.of("same-origin", "none").contains(from);
    if (foreign && !READING.contains(request.getMethod())) {
      response.sendError(HttpServletResponse.SC_FORBIDDEN, "Changes from another site are refused");
      return;
    }
    chain.doFilter(request, response);
  }
}
