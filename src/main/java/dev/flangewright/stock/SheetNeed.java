package dev.flangewright.stock;

/**
 * The metal that a piece is cut from.
 *
 * @param drawn as the part is drawn
 * @param heatTreated whether the workshop brings the piece into its temper itself: then it is often
 *     cut from sheet in another one (common practice, no source)
 */
public record SheetNeed(SheetMetal drawn, boolean heatTreated) {

  /** Whether sheet of that metal will do. */
  public boolean isMetBy(SheetMetal sheet) {
    return heatTreated ? drawn.isAlike(sheet) : drawn.isSame(sheet);
  }

  /** Whether it is sheet of the very temper that is drawn. */
  public boolean isDrawnAs(SheetMetal sheet) {
    return drawn.isSame(sheet);
  }

  /** {@code "2024 T42, 0.81 mm, or another temper, as it is heat treated"}. */
  public String inWords() {
    return drawn.inWords() + (heatTreated ? ", or another temper, as it is heat treated" : "");
  }
}
