package dev.flangewright.stock;

import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.FormingInput;
import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.materials.MaterialRow;
import dev.flangewright.materials.Thickness;
import dev.flangewright.parts.Faults;
import dev.flangewright.parts.Written;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What an entry of a batch must be. An alloy that no table knows is taken as it is written. */
@Component
class CheckBatch {

  private static final int LONGEST_NOTE = 2000;
  private static final double LARGEST_SHEET_MM = 20000;
  private static final double TO_TENTHS_OF_A_MICROMETRE = 10000.0;

  private final MaterialLibrary library;

  CheckBatch(MaterialLibrary library) {
    this.library = library;
  }

  /**
   * @param today nothing is received later
   */
  BatchFacts facts(BatchEntry written, LocalDate today, Faults faults) {
    if (written.note().length() > LONGEST_NOTE) {
      faults.add("note", written.note(), "it may have at most " + LONGEST_NOTE + " characters");
    }
    return new BatchFacts(
        metal(written, faults),
        written.thickness(),
        faults.perhaps("heat_number", written.heatNumber(), 60),
        faults.perhaps("certificate", written.certificate(), 120),
        faults.perhaps("supplier", written.supplier(), 120),
        size("sheet_width_mm", written.sheetWidthMm(), faults),
        size("sheet_length_mm", written.sheetLengthMm(), faults),
        sheets(written.sheets(), faults),
        received(written.receivedOn(), today, faults),
        faults.perhaps("place", written.place(), 120),
        written.note().strip());
  }

  /** Alloy and temper in the spelling of the library, where it knows them. */
  private SheetMetal metal(BatchEntry written, Faults faults) {
    String alloy = faults.text("alloy", written.alloy(), 60);
    String temper = faults.text("temper", written.temper(), 30);
    double thicknessMm = thickness(written.thickness(), faults);
    Optional<MaterialRow> known =
        library.materials("").stream()
            .filter(row -> row.alloy().equalsIgnoreCase(alloy))
            .filter(row -> row.temper().equalsIgnoreCase(temper))
            .findFirst();
    return known
        .map(row -> new SheetMetal(row.alloy(), row.temper(), thicknessMm))
        .orElse(new SheetMetal(alloy, temper, thicknessMm));
  }

  private double thickness(String written, Faults faults) {
    Optional<Double> mm = library.thickness(written).map(Thickness::mm);
    if (mm.isEmpty()) {
      faults.add(
          "thickness",
          written,
          "it must be written in mm as 1.2, by gauge as 20 SWG or in inches as 0.036 in");
    }
    mm.ifPresent(read -> refuseUnlessSheet(written, read, faults));
    return Math.round(mm.orElse(0.0) * TO_TENTHS_OF_A_MICROMETRE) / TO_TENTHS_OF_A_MICROMETRE;
  }

  private static void refuseUnlessSheet(String written, double mm, Faults faults) {
    try {
      FormingInput.THICKNESS.check(mm);
    } catch (FormingException outside) {
      faults.add("thickness", written, "it must be " + FormingInput.THICKNESS.rangeText());
    }
  }

  private static @Nullable Written size(String field, String written, Faults faults) {
    if (written.isEmpty()) {
      return null;
    }
    try {
      Written mm = new Written(written);
      if (mm.value() > 0 && mm.value() <= LARGEST_SHEET_MM) {
        return mm;
      }
    } catch (NumberFormatException unreadable) {
      // said below, with the range
    }
    faults.add(field, written, "it must be a number above 0 and up to 20000, in mm");
    return null;
  }

  private static @Nullable Integer sheets(String written, Faults faults) {
    if (written.isEmpty()) {
      return null;
    }
    if (written.matches("[1-9]\\d{0,3}")) {
      return Integer.valueOf(written);
    }
    faults.add("sheets", written, "it must be a whole number from 1 to 9999");
    return null;
  }

  private static LocalDate received(String written, LocalDate today, Faults faults) {
    try {
      LocalDate date = LocalDate.parse(written);
      if (!date.isAfter(today) && date.getYear() >= 1900) {
        return date;
      }
      faults.add("received_on", written, "it must not be in the future, nor before 1900");
    } catch (DateTimeParseException unreadable) {
      faults.add("received_on", written, "it must be a date, as 2026-05-04");
    }
    return today;
  }
}
