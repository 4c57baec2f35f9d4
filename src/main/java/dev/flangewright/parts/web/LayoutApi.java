package dev.flangewright.parts.web;

import dev.flangewright.parts.LayOutBlank;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Holes and cutouts over HTTP: the two files of the register do not carry them. */
@RestController
@RequestMapping("/api/v1/parts/{id}/layout")
@Tag(name = "Parts")
class LayoutApi {

  private final Parts parts;
  private final LayOutBlank layOut;

  LayoutApi(Parts parts, LayOutBlank layOut) {
    this.parts = parts;
    this.layOut = layOut;
  }

  @GetMapping
  @Operation(
      summary = "Read holes, cutouts and trim allowance of a part",
      description = "Numbers come as they were written.")
  LayoutAnswer read(@PathVariable long id) {
    return parts.whole(id).map(LayoutAnswer::of).orElseThrow(() -> Refused.unknown("part", id));
  }

  @PutMapping
  @Operation(
      summary = "Replace holes, cutouts and trim allowance of a part",
      description = "All of them or, if one cannot be taken, none. Needs a lead or a manager.")
  LayoutAnswer replace(@PathVariable long id, @Valid @RequestBody LayoutRequest request) {
    layOut.redraw(id, request.version(), request.entry());
    return read(id);
  }
}
