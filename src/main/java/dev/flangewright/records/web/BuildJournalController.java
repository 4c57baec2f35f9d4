package dev.flangewright.records.web;

import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import dev.flangewright.records.Journal;
import dev.flangewright.records.JournalFilter;
import dev.flangewright.records.OpenJournal;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.format.annotation.DateTimeFormat.ISO;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Who changed what in a build. */
@Controller
@RequestMapping("/builds/{id}/journal")
class BuildJournalController {

  private final OpenJournal open;
  private final Builds builds;
  private final JournalPages pages;

  BuildJournalController(OpenJournal open, Builds builds, JournalPages pages) {
    this.open = open;
    this.builds = builds;
    this.pages = pages;
  }

  @GetMapping
  String show(
      @PathVariable long id,
      @RequestParam(defaultValue = "") String part,
      @RequestParam(defaultValue = "") String who,
      @RequestParam(required = false) @DateTimeFormat(iso = ISO.DATE) @Nullable LocalDate day,
      @RequestParam(required = false) @Nullable Long before,
      Model model) {
    Journal journal = open(id, model);
    return pages.show(model, home(id), journal, new JournalFilter(part, who, day), before);
  }

  @GetMapping("/verdict")
  String verdict(
      @PathVariable long id, @RequestParam(defaultValue = "") String checkpoint, Model model) {
    return pages.verdict(model, home(id), open(id, model), checkpoint);
  }

  @GetMapping("/entries.jsonl")
  void export(@PathVariable long id, HttpServletResponse response) throws IOException {
    JournalFile.send(open.ofBuild(id), response);
  }

  private Journal open(long id, Model model) {
    Journal journal = open.ofBuild(id);
    model.addAttribute(
        "build", builds.findById(id).orElseThrow(() -> Refused.unknown("build", id)));
    return journal;
  }

  private static String home(long id) {
    return "/builds/" + id + "/journal";
  }
}
