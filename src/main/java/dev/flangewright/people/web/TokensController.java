package dev.flangewright.people.web;

import dev.flangewright.people.KeepTokens;
import dev.flangewright.people.Refused;
import dev.flangewright.people.TokenPlan;
import java.time.Clock;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The reader's own tokens. A new one is shown in the answer to the form, and never again. */
@Controller
@RequestMapping("/people/tokens")
class TokensController {

  private final KeepTokens tokens;
  private final Clock clock;

  TokensController(KeepTokens tokens, Clock clock) {
    this.tokens = tokens;
    this.clock = clock;
  }

  @GetMapping
  ModelAndView show() {
    return page();
  }

  @PostMapping
  ModelAndView make(
      @RequestParam String name,
      @RequestParam(defaultValue = "false") boolean mayChange,
      @RequestParam int days) {
    try {
      String token = tokens.make(new TokenPlan(name, mayChange, days));
      return page().addObject("made", token);
    } catch (Refused refused) {
      ModelAndView page = page().addObject("refused", refused.getMessage()).addObject("name", name);
      page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
      return page;
    }
  }

  @PostMapping("/{id}/end")
  String end(@PathVariable long id) {
    tokens.end(id);
    return "redirect:/people/tokens";
  }

  private ModelAndView page() {
    return new ModelAndView("people/tokens")
        .addObject(
            "tokens",
            tokens.mine().stream().map(token -> TokenLine.of(token, clock.instant())).toList());
  }
}
