package dev.flangewright.forming;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Something to mind about holes in the web; the sentence is made here and nowhere else.
 *
 * @param holes label of the hole, or of both joined by "and"; empty when all tooling holes are
 *     meant
 * @param haveMm what was measured; null where nothing is
 * @param wantMm what is asked for; null where nothing is
 */
public record HoleFinding(
    Kind kind, String holes, @Nullable Double haveMm, @Nullable Double wantMm) {

  /** What there is to mind; the text has the holes, what is and what should be. */
  public enum Kind {
    OUTSIDE("Hole %1$s does not lie within the outline; it is not taken off area and mass."),
    IN_BEND_OR_FLANGE(
        "Hole %1$s reaches over the bend line: drill it after forming, or it is drawn out of"
            + " round."),
    NEAR_EDGE(
        "Hole %1$s: %2$s mm from its centre to the edge of the blank; two diameters are %3$s mm."),
    NEAR_BEND(
        "Hole %1$s: %2$s mm from its rim to the bend line; nearer than twice the thickness, %3$s"
            + " mm, the bend draws it out of round."),
    NEAR_HOLE(
        "Holes %1$s: %2$s mm from centre to centre; three diameters of the larger are %3$s mm."),
    NEAR_RIM(
        "Holes %1$s: %2$s mm from the smaller one's centre to the other's rim; two diameters are"
            + " %3$s mm."),
    RIMS_NEAR("Holes %1$s: %2$s mm between their rims; twice the thickness is %3$s mm."),
    TOO_FEW_TOOLING(
        "Fewer than two tooling holes: the blank is not held where it belongs on the block."),
    TOOLING_NEAR(
        "The tooling holes farthest apart stand %2$s mm from each other; at least half the blank's"
            + " length, %3$s mm, holds it better."),
    FITS_TURNED(
        "Turned round in its plane the blank goes on the tool pins too; its outline then stands off"
            + " by up to %2$s mm."),
    FITS_MIRRORED(
        "Turned over the blank goes on the tool pins too, and so does one of the other hand; its"
            + " outline then stands off by up to %2$s mm. A third tooling hole out of line and out"
            + " of balance keeps it off.");

    private final String text;

    Kind(String text) {
      this.text = text;
    }
  }

  static HoleFinding of(Kind kind, Hole hole, double haveMm, double wantMm) {
    return new HoleFinding(kind, hole.label(), haveMm, wantMm);
  }

  static HoleFinding of(Kind kind, Hole one, Hole other, double haveMm, double wantMm) {
    return new HoleFinding(kind, one.label() + " and " + other.label(), haveMm, wantMm);
  }

  public String sentence() {
    return kind.text.formatted(holes, mm(haveMm), mm(wantMm));
  }

  private static String mm(@Nullable Double value) {
    return value == null ? "" : String.format(Locale.ROOT, "%.1f", value);
  }
}
