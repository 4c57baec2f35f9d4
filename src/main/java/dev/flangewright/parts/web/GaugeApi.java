package dev.flangewright.parts.web;

import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.ReadGauge;
import dev.flangewright.people.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Gauge readings over HTTP. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Forming figures")
@Transactional(readOnly = true)
class GaugeApi {

  private final Parts parts;
  private final ReadGauge gauge;

  GaugeApi(Parts parts, ReadGauge gauge) {
    this.parts = parts;
    this.gauge = gauge;
  }

  @PostMapping("/parts/{id}/gauge")
  @Operation(
      summary = "Tell from a gauge reading what is left to do to an edge",
      description =
          "From the gap under a straight-edge or at the contour template, the thickness of the edge"
              + " or the angle that the flange stands at. Nothing is stored. "
              + InJson.CAUTION)
  GaugeAnswer read(@PathVariable long id, @Valid @RequestBody GaugeRequest request) {
    Part part = parts.whole(id).orElseThrow(() -> Refused.unknown("part", id));
    return GaugeAnswer.of(gauge.of(part, request.written()));
  }
}
