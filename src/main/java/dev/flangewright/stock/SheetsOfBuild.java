package dev.flangewright.stock;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The batches of a build, read in one statement, and what may be cut from them. */
public record SheetsOfBuild(List<BatchLine> batches) {

  private static final int NAMED = 4;

  /**
   * Why a piece cannot be cut now.
   *
   * @param thicknessMm of the part as drawn
   * @param heatTreated whether the route heat treats the piece, so that the temper may differ
   * @return a sentence; empty where a released batch is there, and also where none of that metal
   *     was ever recorded, since then nothing is known against it
   */
  public Optional<String> lacking(
      String alloy, String temper, double thicknessMm, boolean heatTreated) {
    return lacking(new SheetNeed(new SheetMetal(alloy, temper, thicknessMm), heatTreated));
  }

  /** As {@link #lacking(String, String, double, boolean)}. */
  public Optional<String> lacking(SheetNeed need) {
    List<BatchLine> recorded = of(need);
    return recorded.isEmpty() || recorded.stream().anyMatch(batch -> batch.condition().mayBeCut())
        ? Optional.empty()
        : Optional.of(
            "No sheet of %s is released: %s.".formatted(need.drawn().inWords(), inWords(recorded)));
  }

  /** The batches that may be cut for it; sheet of the very temper drawn first. */
  public List<BatchLine> released(SheetNeed need) {
    return of(need).stream()
        .filter(batch -> batch.condition().mayBeCut())
        .sorted(Comparator.comparing(batch -> !need.isDrawnAs(batch.metal())))
        .toList();
  }

  /** Whether a piece must name its batch: one of its metal is recorded and not used up. */
  public boolean asksFor(SheetNeed need) {
    return of(need).stream().anyMatch(batch -> batch.condition() != BatchCondition.USED_UP);
  }

  /** Every batch of that metal, in whatever condition. */
  public List<BatchLine> of(SheetNeed need) {
    return batches.stream().filter(batch -> need.isMetBy(batch.metal())).toList();
  }

  private static String inWords(List<BatchLine> recorded) {
    String named =
        recorded.stream()
            .limit(NAMED)
            .map(batch -> batch.mark() + " " + batch.condition().sentence())
            .collect(Collectors.joining(", "));
    int more = recorded.size() - NAMED;
    return more > 0 ? named + " and " + more + " more" : named;
  }
}
