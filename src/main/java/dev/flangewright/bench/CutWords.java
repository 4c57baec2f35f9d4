package dev.flangewright.bench;

import dev.flangewright.stock.Batch;
import dev.flangewright.stock.BatchLine;
import dev.flangewright.stock.SheetNeed;
import dev.flangewright.stock.SheetsOfBuild;
import java.util.stream.Collectors;

/**
 * What is said when a batch is missing or may not be cut: what is lacking, and who can clear it.
 */
final class CutWords {

  static final String RELEASED_BY =
      "an inspector or the lead, who release batches; or whoever keeps the stock records another";

  private CutWords() {}

  static String missing(SheetsOfBuild recorded, SheetNeed need) {
    return recorded
        .lacking(need)
        .map(lacking -> lacking + " Who can clear it: " + RELEASED_BY + ".")
        .orElseGet(() -> "Say which batch it was cut from. Released: " + offer(recorded, need));
  }

  private static String offer(SheetsOfBuild recorded, SheetNeed need) {
    return recorded.released(need).stream()
        .map(BatchLine::name)
        .collect(Collectors.joining(", ", "", "."));
  }

  static String notReleased(Batch batch) {
    String clear =
        switch (batch.condition()) {
          case RECEIVED -> "An inspector or the lead checks the certificate and releases it.";
          case HELD_BACK, USED_UP -> "Take another; an inspector or the lead can take it back.";
          case RELEASED -> "";
        };
    return "Batch %s %s. %s".formatted(batch.name(), batch.condition().sentence(), clear);
  }

  static String otherMetal(Batch batch, Piece piece, SheetNeed need) {
    return "Batch %s is %s; %s is cut from %s. Take a batch of that metal."
        .formatted(batch.name(), batch.facts().metal().inWords(), piece.label(), need.inWords());
  }
}
