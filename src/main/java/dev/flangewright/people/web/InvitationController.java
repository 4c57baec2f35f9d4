package dev.flangewright.people.web;

import dev.flangewright.people.Invite;
import dev.flangewright.people.Refused;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ModelMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Where an invitation's link leads: somebody makes an account of their own. */
@Controller
@RequestMapping("/invitation/{secret}")
class InvitationController {

  private final Invite invite;

  InvitationController(Invite invite) {
    this.invite = invite;
  }

  @GetMapping
  ModelAndView show(@PathVariable String secret) {
    return page(secret, "", null, HttpStatus.OK);
  }

  @PostMapping
  ModelAndView accept(
      @PathVariable String secret, @RequestParam String name, @RequestParam String password) {
    try {
      invite.accept(secret, name, password);
      return new ModelAndView("redirect:/sign-in?invited");
    } catch (Refused refused) {
      return page(secret, name, refused.getMessage(), HttpStatus.UNPROCESSABLE_CONTENT);
    }
  }

  private ModelAndView page(
      String secret, String name, @Nullable String refused, HttpStatus status) {
    ModelMap model = new ModelMap();
    invite.behind(secret).ifPresent(invitation -> model.addAttribute("role", invitation.role()));
    model.addAttribute("name", name);
    model.addAttribute("refused", refused);
    boolean open = model.containsAttribute("role");
    return new ModelAndView("people/invitation", model, open ? status : HttpStatus.GONE);
  }
}
