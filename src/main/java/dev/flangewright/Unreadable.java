package dev.flangewright;

import jakarta.validation.ConstraintViolation;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.validation.BindException;
import org.springframework.validation.FieldError;
import org.springframework.web.method.annotation.HandlerMethodValidationException;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/** Problems of a request that was not understood: status 400, naming the field where one is. */
final class Unreadable {

  private static final String NUMBER = "It must be a number.";

  private Unreadable() {}

  static Problem request(String sentence) {
    return Problem.of(
        HttpStatus.BAD_REQUEST, "unreadable", "The request could not be read", sentence);
  }

  static Problem missing(String field) {
    return request(field + " is missing.").with("field", field);
  }

  static Problem parameter(MethodArgumentTypeMismatchException mismatch) {
    return badField(mismatch.getName(), mismatch.getValue(), mismatch.getRequiredType());
  }

  /** Every field that a form or a body got wrong; the first of them as the field. */
  static Problem form(BindException wrong) {
    List<Map<String, String>> all =
        wrong.getFieldErrors().stream()
            .map(error -> Map.of("field", error.getField(), "message", message(error)))
            .toList();
    String sentence =
        wrong.getFieldErrors().stream()
            .map(error -> error.getField() + " " + message(error) + ".")
            .sorted()
            .collect(Collectors.joining(" "));
    FieldError first = wrong.getFieldError();
    return request(sentence.isEmpty() ? "The form could not be read." : sentence)
        .with("field", first == null ? null : first.getField())
        .with("errors", all.size() > 1 ? all : null);
  }

  static Problem parameters(HandlerMethodValidationException wrong) {
    var result = wrong.getParameterValidationResults().get(0);
    String field = String.valueOf(result.getMethodParameter().getParameterName());
    String message = result.getResolvableErrors().get(0).getDefaultMessage();
    ConstraintViolation<?> violation =
        result.unwrap(result.getResolvableErrors().get(0), ConstraintViolation.class);
    Map<String, Object> limits = violation.getConstraintDescriptor().getAttributes();
    return request(field + " " + message + ".")
        .with("field", field)
        .with("value", result.getArgument())
        .with("min", limits.get("min"))
        .with("max", limits.get("max"));
  }

  static Problem body(HttpMessageNotReadableException unreadable) {
    if (unreadable.getCause() instanceof UnrecognizedPropertyException unknown) {
      return unknownField(unknown);
    }
    if (unreadable.getCause() instanceof MismatchedInputException mismatch) {
      return badField(field(mismatch), null, mismatch.getTargetType());
    }
    if (unreadable.getCause() instanceof JacksonException broken) {
      return broken(broken);
    }
    return request("The body is missing or cannot be read; it must be a JSON object.");
  }

  private static Problem unknownField(UnrecognizedPropertyException unknown) {
    String known =
        unknown.getKnownPropertyIds() == null
            ? ""
            : unknown.getKnownPropertyIds().stream()
                .map(String::valueOf)
                .sorted()
                .collect(Collectors.joining(", "));
    return request(
            "%s is not a field of this request; its fields are %s."
                .formatted(unknown.getPropertyName(), known))
        .with("field", unknown.getPropertyName());
  }

  private static Problem broken(JacksonException broken) {
    String field = field(broken).isEmpty() ? fieldReached(broken) : field(broken);
    String where =
        broken.getLocation() == null
            ? ""
            : " at line %d, column %d"
                .formatted(broken.getLocation().getLineNr(), broken.getLocation().getColumnNr());
    String sentence =
        "The body is not JSON%s. NaN and Infinity are no JSON numbers.".formatted(where);
    return request(field.isEmpty() ? sentence : field + " cannot be read. " + sentence)
        .with("field", field.isEmpty() ? null : field);
  }

  /** Text that breaks the grammar has no path yet, but the reader knows the field it stands in. */
  private static String fieldReached(JacksonException failure) {
    String name =
        failure.processor() instanceof JsonParser reader
            ? reader.streamReadContext().currentName()
            : null;
    return name == null ? "" : name;
  }

  private static String field(JacksonException failure) {
    return failure.getPath().stream()
        .map(
            step ->
                step.getPropertyName() == null
                    ? "[" + step.getIndex() + "]"
                    : step.getPropertyName())
        .collect(Collectors.joining("."));
  }

  private static Problem badField(String field, @Nullable Object value, @Nullable Class<?> wanted) {
    List<String> allowed = allowed(wanted);
    String must =
        allowed == null
            ? (wanted != null && isNumber(wanted) ? NUMBER : "It has the wrong form.")
            : "It must be one of " + String.join(", ", allowed) + ".";
    return request((field.isEmpty() ? "The body" : field) + " cannot be read. " + must)
        .with("field", field.isEmpty() ? null : field)
        .with("value", value instanceof String text ? text : null)
        .with("allowed", allowed);
  }

  private static boolean isNumber(Class<?> type) {
    return Number.class.isAssignableFrom(type) || type.isPrimitive() && type != boolean.class;
  }

  private static @Nullable List<String> allowed(@Nullable Class<?> type) {
    return type == null || !type.isEnum()
        ? null
        : Arrays.stream(type.getEnumConstants()).map(String::valueOf).toList();
  }

  private static String message(FieldError error) {
    return error.isBindingFailure() ? "cannot be read" : String.valueOf(error.getDefaultMessage());
  }
}
