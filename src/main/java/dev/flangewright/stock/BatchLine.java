package dev.flangewright.stock;

/**
 * A batch as lists read it.
 *
 * @param heatNumber heat or cast; empty where not known
 */
public record BatchLine(
    long id,
    String mark,
    String alloy,
    String temper,
    double thicknessMm,
    String heatNumber,
    BatchCondition condition) {

  public SheetMetal metal() {
    return new SheetMetal(alloy, temper, thicknessMm);
  }

  /** {@code "B-12 (cast 4711)"}. */
  public String name() {
    return Batch.named(mark, heatNumber);
  }
}
