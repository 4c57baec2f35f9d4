package dev.flangewright.parts;

import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.springframework.http.HttpStatus;
import org.springframework.validation.BindingResult;

/** Writes a refusal onto the form that it answers, so that the form is shown again as typed. */
public final class FormRefusal {

  private static final Pattern WORD = Pattern.compile("_([a-z])");

  private FormRefusal() {}

  /**
   * @throws Refused again, if what the form is about is not there: that is a page of its own
   */
  public static void onto(BindingResult form, HttpServletResponse response, Refused refusal) {
    if (refusal.kind() == Refused.Kind.UNKNOWN) {
      throw refusal;
    }
    boolean conflict = refusal.kind() == Refused.Kind.CONFLICT;
    response.setStatus((conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT).value());
    if (refusal instanceof DrawingRefused drawing) {
      drawing.faults().forEach(fault -> beside(form, fault));
    } else {
      form.reject("refused", String.valueOf(refusal.getMessage()));
    }
  }

  private static void beside(BindingResult form, Fault fault) {
    String property = WORD.matcher(fault.field()).replaceAll(FormRefusal::capital);
    form.rejectValue(property, "refused", ofItsRow(fault).sentence());
  }

  /** Beside a field of a list the reader sees which row it is. */
  private static Fault ofItsRow(Fault fault) {
    String field = fault.field().substring(fault.field().lastIndexOf('.') + 1);
    return new Fault(field, fault.value(), fault.reason());
  }

  private static String capital(MatchResult found) {
    return found.group(1).toUpperCase(Locale.ROOT);
  }
}
