package dev.flangewright.parts.exchange;

/** What an import does to rows or contours. */
public record Counts(int added, int changed, int unchanged) {

  static final Counts NONE = new Counts(0, 0, 0);

  Counts oneMore(boolean isNew, boolean isChanged) {
    return new Counts(
        added + (isNew ? 1 : 0),
        changed + (!isNew && isChanged ? 1 : 0),
        unchanged + (isNew || isChanged ? 0 : 1));
  }

  public int total() {
    return added + changed + unchanged;
  }
}
