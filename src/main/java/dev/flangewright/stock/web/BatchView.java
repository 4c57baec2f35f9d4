package dev.flangewright.stock.web;

import dev.flangewright.materials.OwnMetal;
import dev.flangewright.parts.Written;
import dev.flangewright.people.LogTime;
import dev.flangewright.stock.Batch;
import dev.flangewright.stock.BatchChange;
import dev.flangewright.stock.BatchCondition;
import dev.flangewright.stock.BatchFacts;
import dev.flangewright.stock.PiecesCut.CutPiece;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The page of a batch; texts that are not known are empty.
 *
 * @param answer to the question whether it may be cut
 * @param unknownMetal whether no table and no certificate of the build knows the metal
 * @param values whose the build entered from this certificate; empty if it did not
 * @param pieces every piece that was cut from it
 * @param log newest first
 */
record BatchView(
    long id,
    long version,
    String mark,
    String answer,
    BatchCondition condition,
    BatchFacts facts,
    String thickness,
    String receivedOn,
    String size,
    boolean unknownMetal,
    String values,
    List<CutPiece> pieces,
    List<BatchButton> buttons,
    List<BatchButton> withWords,
    List<LogLine> log) {

  static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);

  /** Who did what, and what they said. */
  record LogLine(String when, String said, String words) {

    static LogLine of(BatchChange change, Instant now) {
      return new LogLine(
          LogTime.of(change.doneAt(), now),
          change.who() + ": " + change.condition().word(),
          change.words());
    }
  }

  static BatchView of(
      Batch batch,
      List<CutPiece> pieces,
      boolean unknownMetal,
      Optional<OwnMetal> values,
      Instant now) {
    BatchFacts facts = batch.facts();
    return new BatchView(
        batch.id(),
        batch.version(),
        batch.mark(),
        answer(batch),
        batch.condition(),
        facts,
        thickness(facts),
        DAY.format(facts.receivedOn()),
        size(facts),
        unknownMetal,
        values.map(OwnMetal::name).orElse(""),
        pieces,
        BatchButton.on(batch.condition(), false),
        BatchButton.on(batch.condition(), true),
        log(batch, now));
  }

  private static String answer(Batch batch) {
    return switch (batch.condition()) {
      case RELEASED -> "Yes, it is released.";
      case RECEIVED ->
          batch.facts().certificate().isEmpty()
              ? "No. It is received; the number of its certificate is missing, and nobody has"
                  + " checked it."
              : "No. It is received; an inspector or the lead has to check its certificate.";
      case HELD_BACK -> "No. It is held back: " + lastWords(batch) + ".";
      case USED_UP -> "No. It is used up.";
    };
  }

  private static String lastWords(Batch batch) {
    return batch.changes().stream()
        .filter(change -> change.condition() == BatchCondition.HELD_BACK)
        .filter(change -> !change.words().startsWith("changed "))
        .map(BatchChange::words)
        .reduce("", (earlier, later) -> later);
  }

  /** As written; by gauge or in inches with the mm beside it. */
  static String thickness(BatchFacts facts) {
    String written = facts.thickness();
    if (written.matches("[0-9.]+")) {
      return written + " mm";
    }
    return written.endsWith("mm")
        ? written
        : String.format(Locale.ROOT, "%s (%.2f mm)", written, facts.metal().thicknessMm());
  }

  private static String size(BatchFacts facts) {
    Written width = facts.sheetWidthMm();
    Written length = facts.sheetLengthMm();
    String one = width == null && length == null ? "" : mm(width) + " × " + mm(length) + " mm";
    Integer sheets = facts.sheets();
    if (sheets == null) {
      return one;
    }
    String count = sheets + (sheets == 1 ? " sheet" : " sheets");
    return one.isEmpty() ? count : count + ", " + one;
  }

  private static String mm(@Nullable Written side) {
    return side == null ? "?" : side.text();
  }

  private static List<LogLine> log(Batch batch, Instant now) {
    List<LogLine> log =
        new ArrayList<>(batch.changes().stream().map(change -> LogLine.of(change, now)).toList());
    Collections.reverse(log);
    return log;
  }

  /** How many pieces are in which state would be lost in a long list: the sum, in words. */
  public String count() {
    return pieces.isEmpty()
        ? "No piece was cut from it yet."
        : "%d %s cut from it."
            .formatted(pieces.size(), pieces.size() == 1 ? "piece was" : "pieces were");
  }

  /** Whether what was cut from it has to be looked at. */
  public boolean doubtful() {
    return condition == BatchCondition.HELD_BACK && !pieces.isEmpty();
  }
}
