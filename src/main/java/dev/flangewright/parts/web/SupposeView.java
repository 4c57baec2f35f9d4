package dev.flangewright.parts.web;

import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartFigures;
import java.util.ArrayList;
import java.util.List;

/**
 * A part as it is drawn beside the same part as it is supposed.
 *
 * @param same whether the supposition is the drawing itself
 */
record SupposeView(
    PartSheetView drawn, PartSheetView supposed, List<Compared> tables, boolean same) {

  /** One table of figures compared. */
  record Compared(String caption, List<ComparedRow> rows) {

    public long changes() {
      return rows.stream().filter(ComparedRow::differs).count();
    }
  }

  static SupposeView of(Part part, PartFigures drawn, PartFigures supposed) {
    PartSheetView before = PartSheetView.of(part, drawn);
    PartSheetView after = PartSheetView.of(part, supposed);
    return new SupposeView(
        before, after, tables(before, after), drawn.part().equals(supposed.part()));
  }

  private static List<Compared> tables(PartSheetView before, PartSheetView after) {
    List<Compared> tables = new ArrayList<>();
    tables.add(new Compared("Bend", ComparedRow.of(before.bend(), after.bend())));
    tables.add(
        new Compared("Blank, at the working width", ComparedRow.of(before.blank(), after.blank())));
    for (int i = 0; i < after.flanges().size(); i++) {
      FlangeFiguresView was = before.flanges().get(i);
      FlangeFiguresView is = after.flanges().get(i);
      String name = "The " + is.flange().name() + " edge, ";
      tables.add(
          new Compared(name + "what it has to do", ComparedRow.of(was.demand(), is.demand())));
      tables.add(
          new Compared(name + "what the blank needs", ComparedRow.of(was.blank(), is.blank())));
    }
    return List.copyOf(tables);
  }
}
