package dev.flangewright.parts.web;

/**
 * A line of a table of figures.
 *
 * @param key of the formula, empty for a figure that is not computed
 * @param note what a reader should know beside the figure, perhaps empty
 */
record FigureRow(String label, Figure figure, String key, String note) {

  static FigureRow of(String label, Figure figure, String key) {
    return new FigureRow(label, figure, key, "");
  }

  FigureRow noting(String words) {
    return new FigureRow(label, figure, key, words);
  }
}
