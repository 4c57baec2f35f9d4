package dev.flangewright.records.web;

import dev.flangewright.records.Checkpoint;
import dev.flangewright.records.Journal;
import dev.flangewright.records.OpenJournal;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The journal over HTTP. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Journal")
class JournalApi {

  private final OpenJournal open;

  JournalApi(OpenJournal open) {
    this.open = open;
  }

  @GetMapping(path = "/builds/{id}/journal", produces = JournalFile.TYPE)
  @Operation(
      summary = "Take the journal of a build along",
      description =
          "JSON Lines: one canonical entry a line, oldest first; the last line is the checkpoint at"
              + " which it ends. docs/records.md describes the bytes. Needs the account of a lead,"
              + " manager or inspector.")
  void entries(@PathVariable long id, HttpServletResponse response) throws IOException {
    JournalFile.send(open.ofBuild(id), response);
  }

  @GetMapping("/builds/{id}/journal/checkpoint")
  @Operation(
      summary = "Say where the journal of a build stands",
      description = "Keep it elsewhere: it shows later whether the history was cut or rewritten.")
  CheckpointAnswer checkpoint(@PathVariable long id) {
    return CheckpointAnswer.of(open.ofBuild(id).checkpoint());
  }

  @GetMapping("/builds/{id}/journal/verdict")
  @Operation(
      summary = "Verify the journal of a build",
      description = "Names the first entry that does not fit.")
  VerdictAnswer verdict(
      @PathVariable long id,
      @Parameter(description = "A checkpoint taken before; may be left out.")
          @RequestParam(defaultValue = "")
          String checkpoint) {
    return answer(open.ofBuild(id), checkpoint);
  }

  @GetMapping(path = "/journal", produces = JournalFile.TYPE)
  @Operation(
      summary = "Take the journal of the installation along",
      description = "Of accounts and of the builds themselves. Needs the account of a lead.")
  void entries(HttpServletResponse response) throws IOException {
    JournalFile.send(open.ofInstallation(), response);
  }

  @GetMapping("/journal/checkpoint")
  @Operation(summary = "Say where the journal of the installation stands")
  CheckpointAnswer checkpoint() {
    return CheckpointAnswer.of(open.ofInstallation().checkpoint());
  }

  @GetMapping("/journal/verdict")
  @Operation(summary = "Verify the journal of the installation")
  VerdictAnswer verdict(
      @Parameter(description = "A checkpoint taken before; may be left out.")
          @RequestParam(defaultValue = "")
          String checkpoint) {
    return answer(open.ofInstallation(), checkpoint);
  }

  private static VerdictAnswer answer(Journal journal, String text) {
    Checkpoint old = JournalPages.old(text);
    return VerdictAnswer.of(journal.verify(old), old);
  }
}
