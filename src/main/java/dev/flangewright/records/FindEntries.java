package dev.flangewright.records;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Finds the entries of a chain that somebody looks for, newest first. */
@Component
class FindEntries {

  private final JdbcClient jdbc;

  FindEntries(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** Their lines. */
  List<String> lines(String chain, JournalFilter filter, long before, int most) {
    List<String> conditions = new ArrayList<>(List.of("chain = :chain", "seq < :before"));
    Map<String, Object> values = new HashMap<>(Map.of("chain", chain, "before", before));
    if (!filter.part().isEmpty()) {
      conditions.add("part in (:part, :capitals)");
      values.put("part", filter.part());
      values.put("capitals", filter.part().toUpperCase(Locale.ROOT));
    }
    if (!filter.who().isEmpty()) {
      conditions.add("who = :who");
      values.put("who", filter.who());
    }
    LocalDate day = filter.day();
    if (day != null) {
      conditions.add("written_at >= :dawn and written_at < :nextDawn");
      values.put("dawn", dawn(day));
      values.put("nextDawn", dawn(day.plusDays(1)));
    }
    return jdbc.sql(
            "select line from journal_entry where "
                + String.join(" and ", conditions)
                + " order by seq desc limit "
                + most)
        .params(values)
        .query(String.class)
        .list();
  }

  private static OffsetDateTime dawn(LocalDate day) {
    return day.atStartOfDay().atOffset(ZoneOffset.UTC);
  }
}
