package dev.flangewright.records.web;

import dev.flangewright.people.Refused;
import dev.flangewright.records.Checkpoint;
import dev.flangewright.records.Journal;
import dev.flangewright.records.JournalFilter;
import dev.flangewright.records.JournalPage;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import tools.jackson.databind.json.JsonMapper;

/** Fills the pages of a chain, of whichever it is. */
@Component
class JournalPages {

  private final JsonMapper json;

  JournalPages(JsonMapper json) {
    this.json = json;
  }

  /**
   * @param home where the journal is, without the path of the installation
   * @param before only entries of a smaller number; null for the newest
   */
  String show(
      Model model, String home, Journal journal, JournalFilter filter, @Nullable Long before) {
    JournalPage page = journal.page(filter, before == null ? Long.MAX_VALUE : before);
    List<EntryRow> rows =
        page.lines().stream().map(line -> json.readValue(line, EntryRow.class)).toList();
    model.addAttribute("home", home);
    model.addAttribute("filter", filter);
    model.addAttribute("rows", rows);
    model.addAttribute("older", page.hasMore() ? rows.get(rows.size() - 1).seq() : null);
    model.addAttribute("isNewest", before == null);
    model.addAttribute("checkpoint", journal.checkpoint());
    return "records/journal";
  }

  /**
   * @param text a checkpoint, or blank to look at the links alone
   */
  String verdict(Model model, String home, Journal journal, String text) {
    model.addAttribute("home", home);
    model.addAttribute("text", text);
    model.addAttribute("checkpoint", journal.checkpoint());
    try {
      Checkpoint old = old(text);
      model.addAttribute("old", old);
      model.addAttribute("verdict", journal.verify(old));
    } catch (Refused refusal) {
      model.addAttribute("refused", refusal.getMessage());
    }
    return "records/verdict";
  }

  /**
   * @return null if the text is blank
   * @throws Refused if it is no checkpoint
   */
  static @Nullable Checkpoint old(String text) {
    return text.isBlank()
        ? null
        : Checkpoint.read(text)
            .orElseThrow(
                () ->
                    Refused.unacceptable(
                        "This is no checkpoint. It begins with the word checkpoint and has the"
                            + " chain, the count, 64 digits and a time."));
  }
}
