package dev.flangewright.parts.web;

import dev.flangewright.forming.Formula;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A figure of a part as it is drawn beside the same figure as it is supposed. */
record ComparedRow(
    String label, Figure drawn, Figure supposed, @Nullable Formula formula, String note) {

  private static final Figure NONE = Figure.words("none");

  /** Whether the page should point the row out: it reads otherwise than before. */
  public boolean differs() {
    return !drawn.equals(supposed);
  }

  /** Row by row, by their labels; a row that only one side has stands against "none". */
  static List<ComparedRow> of(List<FigureRow> drawn, List<FigureRow> supposed) {
    Map<String, FigureRow> before = byLabel(drawn);
    Map<String, FigureRow> after = byLabel(supposed);
    Set<String> labels = new LinkedHashSet<>(after.keySet());
    labels.addAll(before.keySet());
    List<ComparedRow> rows = new ArrayList<>();
    labels.forEach(label -> rows.add(of(label, before.get(label), after.get(label))));
    return List.copyOf(rows);
  }

  private static ComparedRow of(
      String label, @Nullable FigureRow before, @Nullable FigureRow after) {
    FigureRow said = after == null ? before : after;
    return new ComparedRow(
        label,
        before == null ? NONE : before.figure(),
        after == null ? NONE : after.figure(),
        said == null ? null : said.formula(),
        said == null ? "" : said.note());
  }

  private static Map<String, FigureRow> byLabel(List<FigureRow> rows) {
    Map<String, FigureRow> byLabel = new LinkedHashMap<>();
    rows.forEach(row -> byLabel.put(row.label(), row));
    return byLabel;
  }
}
