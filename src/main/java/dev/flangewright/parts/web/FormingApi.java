package dev.flangewright.parts.web;

import dev.flangewright.people.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The calculation alone, without a register entry. */
@RestController
@RequestMapping("/api/v1/forming")
@Tag(name = "Forming figures")
class FormingApi {

  @PostMapping("/flange")
  @Operation(
      summary = "Figure one section of a flange",
      description =
          "Setback, bend allowance, blank, edge strain and edge to gather of a single section."
              + " Nothing is stored. "
              + InJson.CAUTION)
  FlangeAnswer flange(@Valid @RequestBody FlangeRequest request) {
    if (request.lacksItsRadius()) {
      throw Refused.unacceptable(
          "contourRadiusMm is missing: a flange that shrinks or stretches follows a radius.");
    }
    return FlangeAnswer.of(request.section());
  }

  @PostMapping("/contour")
  @Operation(
      summary = "Take a contour from an SVG path",
      description =
          "Stations on the path, its length, corners, and the kind of flange it makes. Nothing is"
              + " stored. "
              + InJson.CAUTION)
  ContourAnswer contour(@Valid @RequestBody ContourRequest request) {
    return ContourAnswer.of(request.contour());
  }
}
