package dev.flangewright.stock;

import java.util.Objects;
import java.util.Optional;

/**
 * A batch as somebody wrote it into a form, before it is checked.
 *
 * @param receivedOn a date as {@code 2026-05-04}
 */
public record BatchEntry(
    String mark,
    String alloy,
    String temper,
    String thickness,
    String heatNumber,
    String certificate,
    String supplier,
    String sheetWidthMm,
    String sheetLengthMm,
    String sheets,
    String receivedOn,
    String place,
    String note) {

  /** A field that was not sent at all counts as empty. */
  public BatchEntry {
    mark = Objects.requireNonNullElse(mark, "");
    alloy = Objects.requireNonNullElse(alloy, "");
    temper = Objects.requireNonNullElse(temper, "");
    thickness = Objects.requireNonNullElse(thickness, "");
    heatNumber = Objects.requireNonNullElse(heatNumber, "");
    certificate = Objects.requireNonNullElse(certificate, "");
    supplier = Objects.requireNonNullElse(supplier, "");
    sheetWidthMm = Objects.requireNonNullElse(sheetWidthMm, "");
    sheetLengthMm = Objects.requireNonNullElse(sheetLengthMm, "");
    sheets = Objects.requireNonNullElse(sheets, "");
    receivedOn = Objects.requireNonNullElse(receivedOn, "");
    place = Objects.requireNonNullElse(place, "");
    note = Objects.requireNonNullElse(note, "");
  }

  /** A batch with nothing known but its metal and when it came. */
  public static BatchEntry of(
      String mark, String alloy, String temper, String thickness, String receivedOn) {
    return new BatchEntry(
        mark, alloy, temper, thickness, "", "", "", "", "", "", receivedOn, "", "");
  }

  /** A batch as it stands in the record. */
  public static BatchEntry of(Batch batch) {
    BatchFacts facts = batch.facts();
    return new BatchEntry(
        batch.mark(),
        facts.metal().alloy(),
        facts.metal().temper(),
        facts.thickness(),
        facts.heatNumber(),
        facts.certificate(),
        facts.supplier(),
        Objects.toString(facts.sheetWidthMm(), ""),
        Objects.toString(facts.sheetLengthMm(), ""),
        Optional.ofNullable(facts.sheets()).map(String::valueOf).orElse(""),
        facts.receivedOn().toString(),
        facts.place(),
        facts.note());
  }
}
