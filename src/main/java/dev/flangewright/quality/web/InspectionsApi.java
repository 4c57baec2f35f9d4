package dev.flangewright.quality.web;

import dev.flangewright.quality.RecordInspection;
import dev.flangewright.quality.ScrapCauses;
import dev.flangewright.receipts.EntryKey;
import dev.flangewright.receipts.Once;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Inspections and scrap causes over HTTP. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Inspections")
class InspectionsApi {

  private final RecordInspection inspect;
  private final ScrapCauses causes;
  private final Once once;
  private final ReadInspection answers;

  InspectionsApi(RecordInspection inspect, ScrapCauses causes, Once once, ReadInspection answers) {
    this.inspect = inspect;
    this.causes = causes;
    this.once = once;
    this.answers = answers;
  }

  @PostMapping("/pieces/{id}/inspections")
  @ResponseStatus(HttpStatus.CREATED)
  @Operation(
      summary = "Record an inspection of a piece",
      description =
          "The record is never changed afterwards. Accept, rework and concession need an inspector"
              + " or the lead; a fitter may scrap. This is the shop's own record: it approves"
              + " nothing that the approved drawing and licensed people have to approve.")
  InspectionAnswer inspect(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @Valid @RequestBody InspectionRequest request) {
    return answers.of(
        once.of(request.ask(key), "piece " + id, () -> inspect.of(id, request.finding()).id()));
  }

  @GetMapping("/scrap-causes")
  @Operation(summary = "List the scrap causes on offer", description = "Retired ones are left out.")
  List<CauseAnswer> causes() {
    return causes.findByRetiredFalseOrderBySeq().stream().map(CauseAnswer::of).toList();
  }
}
