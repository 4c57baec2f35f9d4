package dev.flangewright.people.web;

import dev.flangewright.people.Invite;
import dev.flangewright.people.Role;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/**
 * Where the lead invites people. A new link is shown in the answer to the form, and never again.
 */
@Controller
@RequestMapping("/people/invitations")
class InviteController {

  private final Invite invite;

  InviteController(Invite invite) {
    this.invite = invite;
  }

  @GetMapping
  ModelAndView show() {
    return new ModelAndView("people/invitations")
        .addObject("roles", Role.values())
        .addObject("open", invite.open().stream().map(InvitationLine::of).toList());
  }

  @PostMapping
  ModelAndView invite(@RequestParam Role role) {
    String link =
        ServletUriComponentsBuilder.fromCurrentContextPath()
            .pathSegment("invitation", invite.to(role))
            .toUriString();
    return show().addObject("link", link);
  }

  @PostMapping("/{id}/withdraw")
  String withdraw(@PathVariable long id) {
    invite.withdraw(id);
    return "redirect:/people/invitations";
  }
}
