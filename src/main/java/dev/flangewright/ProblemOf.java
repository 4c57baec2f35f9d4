package dev.flangewright;

import dev.flangewright.bench.StageRefusal;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.SvgPathException;
import dev.flangewright.parts.DrawingRefused;
import dev.flangewright.parts.Fault;
import dev.flangewright.parts.exchange.ImportRefused;
import dev.flangewright.people.Refused;
import dev.flangewright.people.TooManyAttempts;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hibernate.exception.ConstraintViolationException;
import org.hibernate.exception.ConstraintViolationException.ConstraintKind;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.HttpStatus;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.transaction.CannotCreateTransactionException;
import org.springframework.validation.BindException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.method.annotation.HandlerMethodValidationException;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;
import org.springframework.web.multipart.support.MissingServletRequestPartException;

/** Says which problem a failure is; the first rule that fits decides. */
final class ProblemOf {

  private record Rule<T>(Class<T> failure, Function<T, Problem> problem) {

    Optional<Problem> apply(Object thrown) {
      return failure.isInstance(thrown)
          ? Optional.of(problem.apply(failure.cast(thrown)))
          : Optional.empty();
    }
  }

  private static final List<Rule<?>> RULES =
      List.of(
          new Rule<>(StageRefusal.class, r -> refused(r).with("rule", r.rule().name())),
          new Rule<>(DrawingRefused.class, ProblemOf::drawing),
          new Rule<>(ImportRefused.class, ProblemOf::files),
          new Rule<>(Refused.class, ProblemOf::refused),
          new Rule<>(FormingException.class, ProblemOf::forming),
          new Rule<>(SvgPathException.class, ProblemOf::path),
          new Rule<>(ConcurrencyFailureException.class, lost -> Problem.quicker()),
          new Rule<>(CannotCreateTransactionException.class, none -> Problem.busy()),
          new Rule<>(DataAccessResourceFailureException.class, none -> Problem.busy()),
          new Rule<>(DataIntegrityViolationException.class, ProblemOf::integrity),
          new Rule<>(AccessDeniedException.class, no -> Problem.ofStatus(HttpStatus.FORBIDDEN)),
          new Rule<>(TooManyAttempts.class, many -> Problem.tooOften(many.seconds())),
          new Rule<>(
              AuthenticationException.class, no -> Problem.ofStatus(HttpStatus.UNAUTHORIZED)),
          new Rule<>(MaxUploadSizeExceededException.class, much -> Problem.tooLarge()),
          new Rule<>(
              MultipartException.class,
              bad -> Unreadable.request("The request is not a readable multipart form.")),
          new Rule<>(HttpMessageNotReadableException.class, Unreadable::body),
          new Rule<>(MethodArgumentTypeMismatchException.class, Unreadable::parameter),
          new Rule<>(BindException.class, Unreadable::form),
          new Rule<>(HandlerMethodValidationException.class, Unreadable::parameters),
          new Rule<>(
              MissingServletRequestParameterException.class,
              missing -> Unreadable.missing(missing.getParameterName())),
          new Rule<>(
              MissingServletRequestPartException.class,
              missing -> Unreadable.missing(missing.getRequestPartName())),
          new Rule<>(HttpRequestMethodNotSupportedException.class, ProblemOf::method),
          new Rule<>(
              ErrorResponse.class,
              known -> Problem.ofStatus(known.getStatusCode()).with(known.getHeaders())));

  private ProblemOf() {}

  /** The problem, or empty for a failure that nobody foresaw. */
  static Optional<Problem> failure(Throwable thrown) {
    return RULES.stream().flatMap(rule -> rule.apply(thrown).stream()).findFirst();
  }

  private static Problem refused(Refused refusal) {
    String sentence = String.valueOf(refusal.getMessage());
    return switch (refusal.kind()) {
      case UNKNOWN ->
          Problem.of(HttpStatus.NOT_FOUND, "unknown", "There is no such thing", sentence);
      case CONFLICT ->
          Problem.of(HttpStatus.CONFLICT, "conflict", "That cannot be done now", sentence);
      case UNACCEPTABLE -> unacceptable(sentence);
    };
  }

  private static Problem drawing(DrawingRefused refusal) {
    Fault first = refusal.faults().get(0);
    return refused(refusal)
        .with("field", first.field())
        .with("value", first.value())
        .with("errors", refusal.faults());
  }

  private static Problem files(ImportRefused refusal) {
    var problems = refusal.plan().problems();
    return refused(refusal)
        .with("field", problems.get(0).column())
        .with("value", problems.get(0).value())
        .with("problemCount", refusal.plan().problemCount())
        .with("problems", problems);
  }

  private static Problem forming(FormingException refusal) {
    return unacceptable(String.valueOf(refusal.getMessage()))
        .with("field", refusal.field())
        .with("value", finite(refusal.value()))
        .with("min", refusal.min())
        .with("max", refusal.max())
        .with("station", refusal.station())
        .with("reason", refusal.reason().name());
  }

  private static Problem path(SvgPathException refusal) {
    return unacceptable(String.valueOf(refusal.getMessage()))
        .with("field", "path")
        .with("position", refusal.position());
  }

  /** JSON has no number for what is not one. */
  private static @Nullable Object finite(@Nullable Double value) {
    return value == null || Double.isFinite(value) ? value : value.toString();
  }

  private static Problem unacceptable(String sentence) {
    return Problem.of(
        HttpStatus.UNPROCESSABLE_CONTENT, "unacceptable", "These values cannot be taken", sentence);
  }

  private static Problem integrity(DataIntegrityViolationException violation) {
    boolean lostTheRace =
        violation.getCause() instanceof ConstraintViolationException constraint
            && (constraint.getKind() == ConstraintKind.UNIQUE
                || constraint.getKind() == ConstraintKind.FOREIGN_KEY);
    return lostTheRace
        ? Problem.quicker()
        : unacceptable("One of the values does not fit its field. Nothing was stored.");
  }

  private static Problem method(HttpRequestMethodNotSupportedException refused) {
    String taken =
        String.join(", ", Optional.ofNullable(refused.getSupportedMethods()).orElse(new String[0]));
    return Problem.of(
            HttpStatus.METHOD_NOT_ALLOWED,
            "method",
            "This address does not take that method",
            "This address does not take %s; it takes %s.".formatted(refused.getMethod(), taken))
        .with(refused.getHeaders());
  }
}
