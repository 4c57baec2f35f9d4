package dev.flangewright.records;

import java.util.List;

/**
 * Some entries of a chain.
 *
 * @param lines newest first
 * @param hasMore whether there are older ones
 */
public record JournalPage(List<String> lines, boolean hasMore) {

  static JournalPage of(List<String> oneMore, int most) {
    return new JournalPage(
        oneMore.subList(0, Math.min(most, oneMore.size())), oneMore.size() > most);
  }
}
