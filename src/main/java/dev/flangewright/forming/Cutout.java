package dev.flangewright.forming;

import org.jspecify.annotations.Nullable;

/**
 * A piece cut out of a flange from its free edge inwards, such as the way for a stringer.
 *
 * <p>FM-CUT: demand is integrated over the metal that is left. Under a cutout of part depth the
 * flange is as wide as what is left of it; through a full one there is none. No relief is credited
 * at the ends of a cutout: the metal beside it counts as if the flange went on, and the strain
 * there as that of the next station beyond the end, so the demand beside a cutout errs high.
 * Derived.
 *
 * @param fromMm along the mould line from the first station
 * @param toMm along the mould line, above {@code fromMm}
 * @param leftMm flange left under it, to the mould line; below 0 the cut goes that far into the
 *     web, measured from the mould line; null where it goes through the bend, to its tangent line
 */
public record Cutout(double fromMm, double toMm, @Nullable Double leftMm) {

  /**
   * An end of a cutout this near to the contour's end or to another cutout is taken to be there,
   * mm: lengths are written rounded, and no flange so short can be formed.
   */
  static final double ROUNDING_MM = 1;

  public Cutout {
    FormingInput.CUT_FROM.check(fromMm);
    FormingInput.CUT_TO.check(toMm);
    FormingInput.CUT_LEFT.checkIfKnown(leftMm);
    if (toMm <= fromMm) {
      throw FormingException.of(
          FormingException.Reason.OUT_OF_RANGE,
          FormingInput.CUT_TO.field(),
          toMm,
          Range.above(fromMm));
    }
  }

  /** Whether a narrower flange goes on under it. */
  public boolean leavesFlange() {
    return leftMm != null && leftMm > 0;
  }

  /** How far the cut's bottom lies outside the mould line where no flange is left: negative. */
  double bottomMm(double setbackMm) {
    return leftMm == null ? -setbackMm : leftMm;
  }

  /** Refuses a cut that would end in the bend itself. */
  void clearsTheBend(StationFigures at) {
    if (leftMm != null && Math.abs(leftMm) < at.setbackMm()) {
      throw FormingException.of(
              FormingException.Reason.CUT_ENDS_IN_BEND,
              FormingInput.CUT_LEFT.field(),
              leftMm,
              Range.atLeast(at.setbackMm()))
          .at(at.number());
    }
  }
}
