package dev.flangewright;

import java.util.HashMap;
import java.util.Map;
import org.springframework.web.servlet.ModelAndView;

/** Answers people: a problem as the error page. */
final class PageProblems {

  private PageProblems() {}

  static ModelAndView page(Problem problem) {
    Map<String, Object> model = new HashMap<>();
    model.put("status", problem.status().value());
    model.put("title", problem.title());
    model.put("detail", problem.detail());
    model.put("reference", problem.facts().get(Problems.REFERENCE));
    ModelAndView page = new ModelAndView("error", model);
    page.setStatus(problem.status());
    return page;
  }
}
