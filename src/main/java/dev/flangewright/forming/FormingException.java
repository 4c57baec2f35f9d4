package dev.flangewright.forming;

import org.jspecify.annotations.Nullable;

/** A refusal of the calculation, with the facts; the sentence is made here and nowhere else. */
public final class FormingException extends RuntimeException {

  /** Why the calculation refuses; the text completes "…: ". */
  public enum Reason {
    NOT_FINITE(""),
    OUT_OF_RANGE(""),
    NOT_WHOLE("it must be a whole number"),
    TOO_FEW_STATIONS(""),
    TOO_MANY_STATIONS(""),
    STATION_NUMBERS("station numbers must rise along the contour"),
    STATIONS_COINCIDE("neighbouring stations must not lie on each other"),
    NO_FAIR_CURVE(
        "no fair curve comes this near to the stations; widen the tolerance or read the point here"
            + " again"),
    CONTOUR_CROSSES_ITSELF("the contour crosses or touches itself here"),
    FLANGE_SHORTER_THAN_BEND("the flange would be shorter than its own bend"),
    FLANGE_WIDER_THAN_CONTOUR("the flange is wider than its contour allows"),
    CUTOUTS_OVERLAP("cutouts of one flange must not overlap"),
    CUT_ENDS_IN_BEND(
        "the cutout would end in the bend; leave at least that much of the flange, or go through it"
            + " and as far into the web"),
    NOTHING_LEFT("the cutouts leave nothing of the flange"),
    KIND_NEEDS_STATIONS("a mixed flange needs its stations, a single section is one kind");

    private final String explanation;

    Reason(String explanation) {
      this.explanation = explanation;
    }
  }

  private final Reason reason;
  private final String field;
  private final @Nullable Double value;
  private final transient @Nullable Range range;
  private final @Nullable Integer station;

  private FormingException(
      Reason reason,
      String field,
      @Nullable Double value,
      @Nullable Range range,
      @Nullable Integer station) {
    super(sentence(reason, field, value, range, station));
    this.reason = reason;
    this.field = field;
    this.value = value;
    this.range = range;
    this.station = station;
  }

  static FormingException of(
      Reason reason, String field, @Nullable Double value, @Nullable Range range) {
    return new FormingException(reason, field, value, range, null);
  }

  /** The same refusal, naming the station it happened at. */
  FormingException at(int stationNumber) {
    return new FormingException(reason, field, value, range, stationNumber);
  }

  private static String sentence(
      Reason reason,
      String field,
      @Nullable Double value,
      @Nullable Range range,
      @Nullable Integer station) {
    var text = new StringBuilder();
    if (station != null) {
      text.append("station ").append(station).append(": ");
    }
    text.append(field);
    if (value != null) {
      text.append(" is ").append(Range.plain(value));
    }
    if (range != null) {
      text.append("; it must be ").append(range.text());
    }
    return reason.explanation.isEmpty()
        ? text.toString()
        : text.append(": ").append(reason.explanation).toString();
  }

  public Reason reason() {
    return reason;
  }

  /** The input's name as {@link FormingInput#field()} has it. */
  public String field() {
    return field;
  }

  /** What was given, or null where no single number is to blame. */
  public @Nullable Double value() {
    return value;
  }

  public @Nullable Double min() {
    return range == null ? null : range.min();
  }

  public @Nullable Double max() {
    return range == null ? null : range.max();
  }

  /** The station's number as in the file, or null when the refusal is not about one station. */
  public @Nullable Integer station() {
    return station;
  }
}
