package dev.flangewright.people.web;

import dev.flangewright.people.InventedAccount;
import org.jspecify.annotations.Nullable;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The sign-in page; it lists the demo accounts in the demo profile only. */
@Controller
class SignInController {

  private final boolean demo;

  SignInController(Environment environment) {
    this.demo = environment.acceptsProfiles(Profiles.of("demo"));
  }

  @GetMapping("/sign-in")
  String signIn(@RequestParam(required = false) @Nullable Integer wait, Model model) {
    model.addAttribute("wait", wait);
    if (demo) {
      model.addAttribute("demoAccounts", InventedAccount.all());
    }
    return "people/sign-in";
  }
}
