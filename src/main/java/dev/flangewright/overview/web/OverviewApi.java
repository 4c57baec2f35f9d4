package dev.flangewright.overview.web;

import dev.flangewright.bench.Hands;
import dev.flangewright.overview.ReadOverview;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The overview over HTTP. */
@RestController
@RequestMapping("/api/v1/builds/{id}/overview")
@Tag(name = "Builds")
class OverviewApi {

  private final ReadOverview overview;

  OverviewApi(ReadOverview overview) {
    this.overview = overview;
  }

  @GetMapping
  @Operation(
      summary = "Tell how far a build is",
      description =
          "Counts by state, stage, frame and risk, what was scrapped and why, and what to form"
              + " next.")
  OverviewAnswer of(@PathVariable long id) {
    return OverviewAnswer.of(overview.of(id, Hands.signedIn()));
  }
}
