package dev.flangewright.stock;

import dev.flangewright.parts.Written;
import java.time.LocalDate;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a delivery of sheet, apart from its mark. Texts that are not known are empty.
 *
 * @param thickness as written, in mm, by gauge ({@code 20 SWG}) or in inches ({@code 0.036 in})
 * @param heatNumber the heat or cast number
 * @param sheetWidthMm of one sheet, with its length; null where not known
 * @param sheets how many came; null where not known
 */
public record BatchFacts(
    SheetMetal metal,
    String thickness,
    String heatNumber,
    String certificate,
    String supplier,
    @Nullable Written sheetWidthMm,
    @Nullable Written sheetLengthMm,
    @Nullable Integer sheets,
    LocalDate receivedOn,
    String place,
    String note) {

  /** Whether both are the same metal by the same papers: what a release vouches for. */
  boolean hasPapersOf(BatchFacts other) {
    return metal.equals(other.metal)
        && heatNumber.equals(other.heatNumber)
        && certificate.equals(other.certificate);
  }

  /** What differs, in words: {@code "place from rack 1 to rack 2; sheets from 4 to 5"}. */
  String changedFrom(BatchFacts before) {
    return Stream.of(
            changed("alloy", before.metal.alloy(), metal.alloy()),
            changed("temper", before.metal.temper(), metal.temper()),
            changed("thickness", before.thickness, thickness),
            changed("heat number", before.heatNumber, heatNumber),
            changed("certificate", before.certificate, certificate),
            changed("supplier", before.supplier, supplier),
            changed("sheet width", before.sheetWidthMm, sheetWidthMm),
            changed("sheet length", before.sheetLengthMm, sheetLengthMm),
            changed("sheets", before.sheets, sheets),
            changed("received on", before.receivedOn, receivedOn),
            changed("place", before.place, place),
            before.note.equals(note) ? "" : "note")
        .filter(change -> !change.isEmpty())
        .reduce((one, other) -> one + "; " + other)
        .orElse("");
  }

  private static String changed(String what, @Nullable Object before, @Nullable Object now) {
    return Objects.equals(before, now)
        ? ""
        : "%s from %s to %s".formatted(what, shown(before), shown(now));
  }

  private static String shown(@Nullable Object value) {
    String text = value == null ? "" : value.toString();
    return text.isEmpty() ? "nothing" : text;
  }
}
