package dev.flangewright.people.web;

import dev.flangewright.people.Clearance;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Permission;
import dev.flangewright.people.Refused;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Who may sign in and what for; everybody changes their own password here. */
@Controller
@RequestMapping("/people")
class PeopleController {

  private final KeepAccounts accounts;

  PeopleController(KeepAccounts accounts) {
    this.accounts = accounts;
  }

  @ModelAttribute("roles")
  Role[] roles() {
    return Role.values();
  }

  @ModelAttribute("clearances")
  Clearance[] clearances() {
    return Clearance.values();
  }

  @GetMapping
  ModelAndView people() {
    return page(NewAccount.empty());
  }

  @PostMapping
  ModelAndView add(NewAccount form, RedirectAttributes said) {
    Role role = Objects.requireNonNullElse(form.role(), Role.GUEST);
    return tried(
        form.toShow(),
        () -> accounts.add(text(form.name()), role, text(form.password())),
        text(form.name()).strip() + " can sign in.",
        said);
  }

  @PostMapping("/{id}/role")
  ModelAndView changeRole(@PathVariable long id, @RequestParam Role role, RedirectAttributes said) {
    return tried(() -> accounts.changeRole(id, role), "The role is changed.", said);
  }

  /** No box ticked sends no parameter: cleared for nothing. */
  @PostMapping("/{id}/clearances")
  ModelAndView clear(
      @PathVariable long id,
      @RequestParam(required = false) @Nullable Set<Clearance> clearance,
      RedirectAttributes said) {
    Set<Clearance> now = Objects.requireNonNullElse(clearance, Set.of());
    return tried(() -> accounts.clear(id, now), "The clearances are changed.", said);
  }

  @PostMapping("/{id}/password")
  ModelAndView setPassword(
      @PathVariable long id, @RequestParam String password, RedirectAttributes said) {
    return tried(() -> accounts.setPassword(id, password), "The password is set.", said);
  }

  @PostMapping("/{id}/enabled")
  ModelAndView enable(
      @PathVariable long id, @RequestParam boolean enabled, RedirectAttributes said) {
    String done = enabled ? "The account can sign in again." : "The account is closed.";
    return tried(() -> accounts.enable(id, enabled), done, said);
  }

  /** Ends all sessions of the account, this one too. */
  @PostMapping("/own-password")
  ModelAndView changeOwn(@RequestParam String old, @RequestParam String password) {
    try {
      accounts.changeOwnPassword(old, password);
      return new ModelAndView("redirect:/sign-in?changed");
    } catch (Refused refusal) {
      return refused(refusal, NewAccount.empty());
    }
  }

  private ModelAndView tried(Runnable change, String done, RedirectAttributes said) {
    return tried(NewAccount.empty(), change, done, said);
  }

  private ModelAndView tried(
      NewAccount form, Runnable change, String done, RedirectAttributes said) {
    try {
      change.run();
      said.addFlashAttribute("done", done);
      return new ModelAndView("redirect:/people");
    } catch (Refused refusal) {
      return refused(refusal, form);
    }
  }

  private ModelAndView refused(Refused refusal, NewAccount form) {
    if (refusal.kind() == Refused.Kind.UNKNOWN) {
      throw refusal;
    }
    ModelAndView page = page(form).addObject("refused", refusal.getMessage());
    page.setStatus(
        refusal.kind() == Refused.Kind.CONFLICT
            ? HttpStatus.CONFLICT
            : HttpStatus.UNPROCESSABLE_CONTENT);
    return page;
  }

  private ModelAndView page(NewAccount form) {
    ModelAndView page = new ModelAndView("people/people");
    page.addObject("self", SignedIn.name()).addObject("newAccount", form);
    return SignedIn.may(Permission.MANAGE_PEOPLE)
        ? page.addObject("accounts", accounts.all())
        : page;
  }

  private static String text(@Nullable String value) {
    return Objects.requireNonNullElse(value, "");
  }
}
