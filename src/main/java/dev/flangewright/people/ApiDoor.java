package dev.flangewright.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpHeaders;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerExceptionResolver;

/** Turns programs away at the door with the same answers as a controller's refusal. */
@Component
class ApiDoor implements AuthenticationEntryPoint, AccessDeniedHandler {

  private final HandlerExceptionResolver answers;

  ApiDoor(@Qualifier("handlerExceptionResolver") HandlerExceptionResolver answers) {
    this.answers = answers;
  }

  @Override
  public void commence(
      HttpServletRequest request, HttpServletResponse response, AuthenticationException nobody) {
    response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Basic realm=\"Flangewright\"");
    answers.resolveException(request, response, null, nobody);
  }

  @Override
  public void handle(
      HttpServletRequest request, HttpServletResponse response, AccessDeniedException denied) {
    answers.resolveException(request, response, null, denied);
  }
}
