package dev.flangewright.parts.web;

import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.FigurePart;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartProgress;
import dev.flangewright.parts.PartProgress.Progress;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.Suppose;
import dev.flangewright.people.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.Map;
import org.hibernate.validator.constraints.Range;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Sort;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The register and its figures over HTTP. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Parts")
@Transactional(readOnly = true)
class PartsApi {

  private static final Sort BY_NUMBER = Sort.by("partNumber", "id");

  private final Builds builds;
  private final Parts parts;
  private final PartProgress progress;
  private final MaterialLibrary library;
  private final FigurePart figure;
  private final Suppose suppose;

  PartsApi(
      Builds builds,
      Parts parts,
      PartProgress progress,
      MaterialLibrary library,
      FigurePart figure,
      Suppose suppose) {
    this.builds = builds;
    this.parts = parts;
    this.progress = progress;
    this.library = library;
    this.figure = figure;
    this.suppose = suppose;
  }

  @GetMapping("/builds/{id}/parts")
  @Operation(
      summary = "List a build's parts by page",
      description = "In the order of their part numbers, with the stored extract of their figures.")
  PartPage parts(
      @PathVariable long id,
      @Parameter(description = "Counted from 0.")
          @RequestParam(defaultValue = "0")
          @Range(min = 0, max = 1_000_000)
          int page,
      @Parameter(description = "Parts a page, 1 to 500.")
          @RequestParam(defaultValue = "50")
          @Range(min = 1, max = 500)
          int size) {
    if (!builds.existsById(id)) {
      throw Refused.unknown("build", id);
    }
    Page<Part> found = parts.findByBuildId(id, PageRequest.of(page, size, BY_NUMBER));
    Map<Long, Progress> states = progress.ofBuild(id);
    return new PartPage(
        found.stream().map(part -> line(part, states)).toList(),
        page,
        size,
        found.getTotalElements(),
        found.getTotalPages());
  }

  private PartLine line(Part part, Map<Long, Progress> states) {
    return PartLine.of(
        part,
        states.getOrDefault(part.id(), Progress.NOT_BEGUN),
        library.thickness(part.drawn().thickness()));
  }

  @GetMapping("/parts/{id}/forming")
  @Operation(
      summary = "Figure a part",
      description =
          "Computed anew from the register entry, station by station, at the working width. A part"
              + " whose contour cannot be formed is refused, naming the station. "
              + InJson.CAUTION)
  PartForming forming(@PathVariable long id) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    return PartForming.of(part, figure.of(part));
  }

  @PostMapping("/parts/{id}/forming")
  @Operation(
      summary = "Figure a part as if it were made otherwise",
      description =
          "The answer of GET, with another thickness, metal, bend radius, width, angle or edge than"
              + " drawn. Nothing is stored. "
              + InJson.CAUTION)
  PartForming supposed(@PathVariable long id, @Valid @RequestBody SupposeRequest request) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    return PartForming.of(part, suppose.of(part, request.written()));
  }
}
