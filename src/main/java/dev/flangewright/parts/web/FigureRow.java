package dev.flangewright.parts.web;

import dev.flangewright.forming.Formula;
import org.jspecify.annotations.Nullable;

/**
 * A line of a table of figures.
 *
 * @param formula null for a figure that is not computed
 * @param note what a reader should know beside the figure, perhaps empty
 */
record FigureRow(String label, Figure figure, @Nullable Formula formula, String note) {

  static FigureRow of(String label, Figure figure, @Nullable Formula formula) {
    return new FigureRow(label, figure, formula, "");
  }

  FigureRow noting(String words) {
    return new FigureRow(label, figure, formula, words);
  }
}
