package dev.flangewright;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.boot.servlet.autoconfigure.MultipartProperties;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses a request that announces more than the largest upload, before anybody reads it: the
 * search for a forgery token would drop the body silently and take it for a forgery.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class TooLargeRefusal extends OncePerRequestFilter {

  private final long mostBytes;

  TooLargeRefusal(MultipartProperties uploads) {
    this.mostBytes = uploads.getMaxRequestSize().toBytes();
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    if (request.getContentLengthLong() > mostBytes) {
      response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
      return;
    }
    chain.doFilter(request, response);
  }
}
