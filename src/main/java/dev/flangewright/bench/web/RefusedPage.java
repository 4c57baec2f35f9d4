package dev.flangewright.bench.web;

import dev.flangewright.people.Refused;
import org.springframework.http.HttpStatus;
import org.springframework.ui.ModelMap;
import org.springframework.web.servlet.ModelAndView;

/** A page shown again with the reason why something was refused. */
final class RefusedPage {

  private RefusedPage() {}

  /** What is not there at all has no page to come back to, and is thrown on. */
  static void throwIfUnknown(Refused refused) {
    if (refused.kind() == Refused.Kind.UNKNOWN) {
      throw refused;
    }
  }

  static ModelAndView of(String view, ModelMap model, Refused refused) {
    model.addAttribute("refused", refused.getMessage());
    boolean conflict = refused.kind() == Refused.Kind.CONFLICT;
    return new ModelAndView(
        view, model, conflict ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
  }
}
