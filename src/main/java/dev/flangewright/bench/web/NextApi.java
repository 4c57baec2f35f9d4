package dev.flangewright.bench.web;

import dev.flangewright.bench.Hands;
import dev.flangewright.bench.PassOnJob;
import dev.flangewright.bench.WhatNext;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import org.hibernate.validator.constraints.Range;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** What needs forming next, over HTTP. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Pieces")
class NextApi {

  private final WhatNext whatNext;
  private final PassOnJob passOn;
  private final Builds builds;

  NextApi(WhatNext whatNext, PassOnJob passOn, Builds builds) {
    this.whatNext = whatNext;
    this.passOn = passOn;
    this.builds = builds;
  }

  @GetMapping("/builds/{id}/next")
  @Operation(
      summary = "Tell what the account that asks should do next",
      description =
          "A job for every part that is not accepted, with the reasons for its place, the weightiest"
              + " first. A job that waits says what is missing and who can clear it.")
  NextAnswer next(
      @PathVariable long id,
      @Parameter(description = "At most so many jobs, 1 to 500.")
          @RequestParam(defaultValue = "12")
          @Range(min = 1, max = 500)
          int limit) {
    if (!builds.existsById(id)) {
      throw Refused.unknown("build", id);
    }
    return NextAnswer.of(whatNext.all(id, Hands.signedIn()), limit);
  }

  @PostMapping("/parts/{id}/pass-on")
  @Operation(
      summary = "Pass on a part's next job for today",
      description =
          "It goes to the end of the account's own list until it is taken back, somebody logs on the"
              + " piece, or the day ends. Others see the reason. Needs an account that logs work or"
              + " does checks; said again, the newest reason counts.")
  PassOnAnswer passOn(@PathVariable long id, @Valid @RequestBody PassOnRequest request) {
    passOn.today(id, request.reason());
    return new PassOnAnswer(id, request.reason().strip());
  }

  @PostMapping("/parts/{id}/pass-on/take-back")
  @Operation(
      summary = "Take back that you passed on a part's next job",
      description = "Needs an account that logs work or does checks.")
  PassOnAnswer takeBack(@PathVariable long id) {
    passOn.takeBack(id);
    return new PassOnAnswer(id, null);
  }
}
