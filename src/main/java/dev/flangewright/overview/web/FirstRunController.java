package dev.flangewright.overview.web;

import dev.flangewright.overview.BeginInstallation;
import dev.flangewright.people.FirstRun;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/** The page of a new installation, open until there is an account. */
@Controller
@RequestMapping("/first-run")
class FirstRunController {

  private static final String PAGE = "people/first-run";
  private static final String ON = "redirect:/sign-in";

  private final FirstRun firstRun;
  private final BeginInstallation begin;

  FirstRunController(FirstRun firstRun, BeginInstallation begin) {
    this.firstRun = firstRun;
    this.begin = begin;
  }

  @GetMapping
  String show(Model model) {
    model.addAttribute("form", new FirstRunForm("", "", "", "empty", ""));
    return firstRun.isOpen() ? PAGE : ON;
  }

  @PostMapping
  String begin(
      @ModelAttribute("form") FirstRunForm form,
      BindingResult found,
      HttpServletResponse response) {
    if (!firstRun.isOpen()) {
      return ON;
    }
    try {
      firstRun.once(form.token(), () -> make(form));
      return ON;
    } catch (Refused refusal) {
      found.reject("refused", String.valueOf(refusal.getMessage()));
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      return PAGE;
    }
  }

  private void make(FirstRunForm form) {
    if (form.start().equals(FirstRunForm.DEMO)) {
      begin.withDemo(form.name(), form.password());
    } else {
      begin.withEmptyBuild(form.name(), form.password(), form.buildName());
    }
  }
}
