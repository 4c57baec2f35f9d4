package dev.flangewright.parts.web;

import dev.flangewright.parts.Builds;
import dev.flangewright.parts.MakeBuild;
import dev.flangewright.people.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.util.UriComponentsBuilder;

/** Builds over HTTP. */
@RestController
@RequestMapping("/api/v1/builds")
@Tag(name = "Builds")
class BuildsApi {

  private final Builds builds;
  private final MakeBuild make;

  BuildsApi(Builds builds, MakeBuild make) {
    this.builds = builds;
    this.make = make;
  }

  @GetMapping
  @Operation(summary = "List all builds", description = "In the order of their names.")
  List<BuildAnswer> all() {
    return builds.findAllByOrderByName().stream().map(BuildAnswer::of).toList();
  }

  @GetMapping("/{id}")
  @Operation(summary = "Read one build")
  BuildAnswer one(@PathVariable long id) {
    return builds.findById(id).map(BuildAnswer::of).orElseThrow(() -> Refused.unknown("build", id));
  }

  @PostMapping
  @Operation(
      summary = "Make a build",
      description = "It starts empty, with the usual route of stages. Needs a lead or a manager.")
  ResponseEntity<BuildAnswer> add(
      @Valid @RequestBody BuildRequest request, UriComponentsBuilder here) {
    String note = request.note() == null ? "" : request.note();
    BuildAnswer made = BuildAnswer.of(make.named(request.name(), note));
    return ResponseEntity.created(
            here.path("/api/v1/builds/{id}").buildAndExpand(made.id()).toUri())
        .body(made);
  }
}
