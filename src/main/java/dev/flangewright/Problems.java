package dev.flangewright;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;

/**
 * The one place where failures become answers: whatever a controller throws, and whatever a filter
 * or the server itself refuses. The address decides whether a page or a problem document goes out.
 */
@ControllerAdvice
@Controller
class Problems implements ErrorController {

  /** The fact that carries the number under which a failure stands in the log. */
  static final String REFERENCE = "reference";

  private static final Logger log = LoggerFactory.getLogger(Problems.class);

  private final ApiProblems api;

  Problems(ApiProblems api) {
    this.api = api;
  }

  @ExceptionHandler
  @Nullable ModelAndView thrown(
      Exception failure, HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    return answer(problem(failure), address(request), request, response);
  }

  /** Where the server sends a request that was refused before it reached a controller. */
  @RequestMapping("/error")
  @Nullable ModelAndView refused(HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    Object failure = request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
    Object status = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
    Problem problem =
        failure instanceof Throwable thrown
            ? problem(thrown)
            : Problem.ofStatus(
                status instanceof Integer code
                    ? HttpStatusCode.valueOf(code)
                    : HttpStatus.NOT_FOUND);
    return answer(problem, address(request), request, response);
  }

  /** What was asked for, also when a second failure happens on the way to the answer. */
  private static String address(HttpServletRequest request) {
    Object asked = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
    return asked == null ? request.getRequestURI() : asked.toString();
  }

  private @Nullable ModelAndView answer(
      Problem problem, String address, HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    problem.headers().forEach((name, values) -> values.forEach(v -> response.addHeader(name, v)));
    if (!ApiProblems.isFor(request, address)) {
      return PageProblems.page(problem);
    }
    api.write(problem, response);
    return null;
  }

  private static Problem problem(Throwable failure) {
    return ProblemOf.failure(failure).orElseGet(() -> unforeseen(failure));
  }

  private static Problem unforeseen(Throwable failure) {
    String reference = UUID.randomUUID().toString().substring(0, 8);
    log.error("Failure {}", reference, failure);
    return Problem.of(
            HttpStatus.INTERNAL_SERVER_ERROR,
            "failed",
            "The program failed at this step",
            "Look whether your last entry is there before you enter it again. The failure stands in"
                + " the log under "
                + reference
                + ".")
        .with(REFERENCE, reference);
  }
}
