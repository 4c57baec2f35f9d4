package dev.flangewright.materials;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How long an alloy stays soft after it was quenched, as the shipped rows have it. Null or empty
 * where no row tells it: nothing is guessed.
 *
 * @param severeFromMin minutes at room temperature by which severe forming is best finished
 * @param severeToMin minutes at room temperature by which it must be
 * @param freezeWithinMin minutes that may pass between quench and freezer
 * @param storage how many days it keeps, the coldest last
 * @param rows the rows these figures come from, with their notes
 */
public record FormingWindow(
    String alloy,
    @Nullable Sourced severeFromMin,
    @Nullable Sourced severeToMin,
    @Nullable Sourced freezeWithinMin,
    List<Storage> storage,
    List<HeatTreatment> rows) {

  private static final String AT_ROOM_TEMPERATURE =
      "forming window at room temperature after quench";
  private static final String BEFORE_FREEZING = "delay after quench before freezing";
  private static final String IN_THE_FREEZER = "refrigerated storage in AQ/W";
  private static final Pattern CELSIUS = Pattern.compile("\\((-?\\d+) C\\)");

  /**
   * A limit of cold storage.
   *
   * @param atOrBelowC degrees Celsius
   * @param longestDays days
   */
  public record Storage(double atOrBelowC, Sourced longestDays) {}

  /** Reads the window out of the rows that name the alloy; empty if none does. */
  static Optional<FormingWindow> of(String alloy, List<HeatTreatment> all) {
    List<HeatTreatment> named = all.stream().filter(row -> row.names(alloy)).toList();
    HeatTreatment room = only(named, AT_ROOM_TEMPERATURE);
    HeatTreatment delay = only(named, BEFORE_FREEZING);
    List<HeatTreatment> cold = of(named, IN_THE_FREEZER).toList();
    List<HeatTreatment> used =
        Stream.concat(Stream.of(room, delay).filter(Objects::nonNull), cold.stream()).toList();
    return used.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new FormingWindow(
                alloy,
                room == null ? null : room.lowest(),
                room == null ? null : room.highest(),
                delay == null ? null : delay.highest(),
                cold.stream()
                    .flatMap(FormingWindow::storage)
                    .sorted(Comparator.comparingDouble(Storage::atOrBelowC).reversed())
                    .toList(),
                used));
  }

  private static Stream<HeatTreatment> of(List<HeatTreatment> rows, String step) {
    return rows.stream().filter(row -> row.step().equals(step));
  }

  private static @Nullable HeatTreatment only(List<HeatTreatment> rows, String step) {
    return of(rows, step).findFirst().orElse(null);
  }

  private static Stream<Storage> storage(HeatTreatment row) {
    Sourced days = row.highest();
    String condition = row.appliesTo();
    Matcher cold = CELSIUS.matcher(condition == null ? "" : condition);
    return days != null && cold.find()
        ? Stream.of(new Storage(Double.parseDouble(cold.group(1)), days))
        : Stream.empty();
  }
}
