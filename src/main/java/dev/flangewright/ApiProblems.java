package dev.flangewright;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Answers programs: a problem as {@code application/problem+json} (RFC 9457). */
@Component
class ApiProblems {

  private static final String ADDRESSES = "/api/";

  private final JsonMapper json;

  ApiProblems(JsonMapper json) {
    this.json = json;
  }

  /** Whether the address is the API's, or whoever asks is a script that reads problems. */
  static boolean isFor(HttpServletRequest request, String address) {
    String accepted = String.valueOf(request.getHeader(HttpHeaders.ACCEPT));
    return address.startsWith(request.getContextPath() + ADDRESSES)
        || accepted.contains(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
  }

  void write(Problem problem, HttpServletResponse response) throws IOException {
    response.resetBuffer();
    response.setStatus(problem.status().value());
    response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
    response.getOutputStream().write(json.writeValueAsBytes(problem.document()));
  }
}
