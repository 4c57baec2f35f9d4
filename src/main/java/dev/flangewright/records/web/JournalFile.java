package dev.flangewright.records.web;

import dev.flangewright.records.Journal;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpHeaders;

/** Hands a chain out as a file of JSON Lines. */
final class JournalFile {

  static final String TYPE = "application/jsonl";

  private JournalFile() {}

  static void send(Journal journal, HttpServletResponse response) throws IOException {
    response.setContentType(TYPE);
    response.setHeader(
        HttpHeaders.CONTENT_DISPOSITION,
        "attachment; filename=\"journal-" + journal.chain() + ".jsonl\"");
    journal.export(response.getOutputStream());
  }
}
