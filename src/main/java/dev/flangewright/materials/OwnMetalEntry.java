package dev.flangewright.materials;

import dev.flangewright.forming.FormingInput;
import dev.flangewright.people.Refused;
import org.jspecify.annotations.Nullable;

/**
 * A certificate's values for an alloy and temper, to be entered.
 *
 * @param fromThicknessMm thinnest sheet it is for; null, with the other, for any thickness
 * @param toThicknessMm thickest sheet it is for
 * @param certificate its number and whatever else tells it apart
 */
public record OwnMetalEntry(
    String alloy,
    String temper,
    @Nullable Double fromThicknessMm,
    @Nullable Double toThicknessMm,
    String certificate,
    CertificateValues values) {

  /**
   * @throws Refused if a text is missing or too long, or the thicknesses make no range
   */
  public OwnMetalEntry {
    alloy = EntryText.of("alloy", alloy, 1, 60);
    temper = EntryText.of("temper", temper, 1, 30);
    certificate = EntryText.of("certificate", certificate, 1, 300);
    FormingInput.THICKNESS.checkIfKnown(fromThicknessMm);
    FormingInput.THICKNESS.checkIfKnown(toThicknessMm);
    values.refuseUnlessSound();
    if ((fromThicknessMm == null) != (toThicknessMm == null)) {
      throw Refused.unacceptable("Give both thicknesses, or neither for any thickness.");
    }
    if (fromThicknessMm != null && toThicknessMm != null && fromThicknessMm > toThicknessMm) {
      throw Refused.unacceptable("The thinnest sheet must not be thicker than the thickest.");
    }
  }
}
