package dev.flangewright.people.web;

import dev.flangewright.people.FirstRun;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Sends every page request to the first-run page while there is no account. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 100)
class FirstRunRedirect extends OncePerRequestFilter {

  private static final List<String> LET_THROUGH =
      List.of(
          "/first-run",
          "/css/",
          "/js/",
          "/webjars/",
          "/icon.svg",
          "/icons/",
          "/manifest.webmanifest",
          "/service-worker.js",
          "/offline",
          "/actuator/",
          "/api/");

  private final FirstRun firstRun;

  FirstRunRedirect(FirstRun firstRun) {
    this.firstRun = firstRun;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    String path = request.getRequestURI().substring(request.getContextPath().length());
    boolean free = LET_THROUGH.stream().anyMatch(path::startsWith);
    if (!free && firstRun.isOpen()) {
      response.sendRedirect(request.getContextPath() + "/first-run");
      return;
    }
    chain.doFilter(request, response);
  }
}
