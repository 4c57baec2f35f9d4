package dev.flangewright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.model;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.view;

import dev.flangewright.people.Refused;
import jakarta.servlet.RequestDispatcher;
import java.sql.SQLException;
import java.util.Map;
import java.util.stream.Stream;
import org.hibernate.exception.ConstraintViolationException;
import org.hibernate.exception.ConstraintViolationException.ConstraintKind;
import org.hibernate.exception.DataException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.dao.CannotAcquireLockException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Controller;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.transaction.CannotCreateTransactionException;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.servlet.view.InternalResourceViewResolver;
import tools.jackson.databind.json.JsonMapper;

/** Every kind of failure, once as a page and once as a problem document. */
class ProblemsTest {

  private static final Map<String, Exception> FAILURES =
      Map.of(
          "unknown", Refused.unknown("part", 77),
          "order", Refused.conflict("That comes later."),
          "value", Refused.unacceptable("name needs 1 to 120 characters."),
          "stale", new ObjectOptimisticLockingFailureException("Piece", 7L),
          "locked", new CannotAcquireLockException("locked"),
          "taken", violation(ConstraintKind.UNIQUE),
          "tooLong", new DataIntegrityViolationException("x", new DataException("x", sql())),
          "denied", new AccessDeniedException("no"),
          "large", new MaxUploadSizeExceededException(45),
          "broken", new IllegalStateException("a secret of the inside"));

  private final Problems problems = new Problems(new ApiProblems(JsonMapper.builder().build()));
  private final MockMvc mvc =
      MockMvcBuilders.standaloneSetup(new Failing(), problems)
          .setControllerAdvice(problems)
          .setViewResolvers(new InternalResourceViewResolver("/pages/", ".html"))
          .build();

  static Stream<Arguments> failures() {
    return Stream.of(
        Arguments.of("unknown", 404, "There is no part 77."),
        Arguments.of("order", 409, "That comes later."),
        Arguments.of("value", 422, "name needs 1 to 120 characters."),
        Arguments.of("stale", 409, "Nothing of what you sent was stored"),
        Arguments.of("locked", 409, "Nothing of what you sent was stored"),
        Arguments.of("taken", 409, "Nothing of what you sent was stored"),
        Arguments.of("tooLong", 422, "Nothing was stored"),
        Arguments.of("denied", 403, "Your account may not do this"),
        Arguments.of("large", 413, "Nothing was stored"),
        Arguments.of("broken", 500, "stands in the log under"));
  }

  @ParameterizedTest
  @MethodSource("failures")
  void people_get_the_error_page_with_its_status_and_a_sentence(
      String failure, int status, String sentence) throws Exception {
    mvc.perform(get("/page/" + failure))
        .andExpect(status().is(status))
        .andExpect(view().name("error"))
        .andExpect(model().attribute("status", status))
        .andExpect(model().attribute("detail", containsString(sentence)));
  }

  @ParameterizedTest
  @MethodSource("failures")
  void programs_get_a_problem_document_with_its_status_and_a_sentence(
      String failure, int status, String sentence) throws Exception {
    mvc.perform(get("/api/v1/" + failure))
        .andExpect(status().is(status))
        .andExpect(content().contentType("application/problem+json"))
        .andExpect(jsonPath("$.status").value(status))
        .andExpect(jsonPath("$.type", matchesPattern("urn:flangewright:problem:[a-z-]+")))
        .andExpect(jsonPath("$.detail", containsString(sentence)));
  }

  @Test
  void a_database_without_a_connection_to_spare_is_to_be_asked_again_soon() {
    Problem problem = ProblemOf.failure(new CannotCreateTransactionException("none")).orElseThrow();
    assertThat(problem.status().value()).isEqualTo(503);
    assertThat(problem.headers().getFirst("Retry-After")).isEqualTo("5");
  }

  @Test
  void a_failure_that_nobody_foresaw_tells_its_reference_and_nothing_of_the_inside()
      throws Exception {
    mvc.perform(get("/api/v1/broken"))
        .andExpect(jsonPath("$.reference", matchesPattern("[0-9a-f]{8}")))
        .andExpect(content().string(not(containsString("secret"))));
    mvc.perform(get("/page/broken"))
        .andExpect(model().attribute("reference", matchesPattern("[0-9a-f]{8}")));
  }

  @Test
  void a_parameter_that_cannot_be_read_is_named() throws Exception {
    mvc.perform(get("/api/v1/count?many=several"))
        .andExpect(status().isBadRequest())
        .andExpect(jsonPath("$.field").value("many"))
        .andExpect(jsonPath("$.value").value("several"));
    mvc.perform(get("/page/count"))
        .andExpect(status().isBadRequest())
        .andExpect(model().attribute("detail", "many is missing."));
  }

  @Test
  void what_the_server_itself_refused_is_answered_by_the_address_it_was_for() throws Exception {
    mvc.perform(refusedByServer("/api/v1/builds"))
        .andExpect(status().is(413))
        .andExpect(content().contentType("application/problem+json"));
    mvc.perform(refusedByServer("/builds/1/import"))
        .andExpect(status().is(413))
        .andExpect(view().name("error"));
    mvc.perform(get("/error")).andExpect(status().isNotFound()).andExpect(view().name("error"));
  }

  private static MockHttpServletRequestBuilder refusedByServer(String address) {
    return get("/error")
        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, 413)
        .requestAttr(RequestDispatcher.ERROR_REQUEST_URI, address);
  }

  private static DataIntegrityViolationException violation(ConstraintKind kind) {
    return new DataIntegrityViolationException(
        "x", new ConstraintViolationException("x", sql(), kind, "unique_name"));
  }

  private static SQLException sql() {
    return new SQLException("x");
  }

  @Controller
  static class Failing {

    @GetMapping({"/page/{failure}", "/api/v1/{failure}"})
    String fail(@PathVariable("failure") String failure) throws Exception {
      throw FAILURES.get(failure);
    }

    @GetMapping({"/page/count", "/api/v1/count"})
    String count(@RequestParam("many") int many) {
      return "counted-" + many;
    }
  }
}
