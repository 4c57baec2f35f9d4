package dev.flangewright.records.web;

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
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Who changed accounts and builds. */
@Controller
@RequestMapping(InstallationJournalController.HOME)
class InstallationJournalController {

  static final String HOME = "/journal";

  private final OpenJournal open;
  private final JournalPages pages;

  InstallationJournalController(OpenJournal open, JournalPages pages) {
    this.open = open;
    this.pages = pages;
  }

  @GetMapping
  String show(
      @RequestParam(defaultValue = "") String part,
      @RequestParam(defaultValue = "") String who,
      @RequestParam(required = false) @DateTimeFormat(iso = ISO.DATE) @Nullable LocalDate day,
      @RequestParam(required = false) @Nullable Long before,
      Model model) {
    return pages.show(
        model, HOME, open.ofInstallation(), new JournalFilter(part, who, day), before);
  }

  @GetMapping("/verdict")
  String verdict(@RequestParam(defaultValue = "") String checkpoint, Model model) {
    return pages.verdict(model, HOME, open.ofInstallation(), checkpoint);
  }

  @GetMapping("/entries.jsonl")
  void export(HttpServletResponse response) throws IOException {
    JournalFile.send(open.ofInstallation(), response);
  }
}
