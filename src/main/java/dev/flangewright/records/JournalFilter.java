package dev.flangewright.records;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Which entries are looked for.
 *
 * @param part a part number, in its own or in small letters; empty for all
 * @param who an account; empty for all
 * @param day in UTC; null for all
 */
public record JournalFilter(String part, String who, @Nullable LocalDate day) {

  public static final JournalFilter ALL = new JournalFilter("", "", null);

  public JournalFilter {
    part = part.strip();
    who = who.strip();
  }

  public boolean isAll() {
    return part.isEmpty() && who.isEmpty() && day == null;
  }
}
