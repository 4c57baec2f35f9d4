package dev.flangewright.materials;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/**
 * Looks values up: a build's own, and those of the shipped tables, which are read once because they
 * change only by migration.
 */
@Service
public class MaterialLibrary {

  private static final double MM_PER_INCH = 25.4;
  private static final Pattern WRITTEN =
      Pattern.compile("(\\d{1,4}(?:\\.\\d{1,6})?)(?: (SWG|AWG|in|mm))?");

  private final JdbcClient jdbc;
  private final OwnMetals own;
  private volatile @Nullable ShippedTables tables;

  MaterialLibrary(JdbcClient jdbc, OwnMetals own) {
    this.jdbc = jdbc;
    this.own = own;
  }

  /** What the shipped tables know of an alloy and temper at a thickness; perhaps nothing. */
  public Metal metal(String alloy, String temper, double thicknessMm) {
    return new MetalLookup(tables()).find(alloy, temper, thicknessMm);
  }

  /** What a build knows of it: value by value its own certificates first, then the tables. */
  public Metal metal(long buildId, String alloy, String temper, double thicknessMm) {
    Metal shipped = metal(alloy, temper, thicknessMm);
    return own.inForce(buildId).stream()
        .filter(metal -> metal.isFor(alloy, temper, thicknessMm))
        .findFirst()
        .map(metal -> metal.over(shipped))
        .orElse(shipped);
  }

  /** Every alloy and temper that a build can choose from, as {@code 2024 T3}. */
  public List<String> names(long buildId) {
    return Stream.concat(
            own.inForce(buildId).stream().map(OwnMetal::name),
            tables().materials().stream().map(row -> row.alloy() + " " + row.temper()))
        .distinct()
        .sorted()
        .toList();
  }

  /** Every alloy that a table names. */
  public List<String> alloys() {
    return Stream.concat(
            tables().materials().stream().map(MaterialRow::alloy),
            tables().radii().stream().map(BendRadiusRow::alloy))
        .distinct()
        .sorted()
        .toList();
  }

  /** The rows of an alloy in the table of metals; of all alloys if the name is empty. */
  public List<MaterialRow> materials(String alloy) {
    return tables().materials().stream().filter(row -> isOf(alloy, row.alloy())).toList();
  }

  /** The rows of an alloy in the tables of bend radii; of all alloys if the name is empty. */
  public List<BendRadiusRow> bendRadii(String alloy) {
    return tables().radii().stream().filter(row -> isOf(alloy, row.alloy())).toList();
  }

  /** The computed hardening exponents of an alloy; of all alloys if the name is empty. */
  public List<HardeningRow> hardening(String alloy) {
    return tables().hardening().stream().filter(row -> isOf(alloy, row.alloy())).toList();
  }

  /** The heat treatments that name an alloy or a group it may be in; all if the name is empty. */
  public List<HeatTreatment> heatTreatments(String alloy) {
    return tables().heatTreatments().stream()
        .filter(row -> alloy.isEmpty() || row.names(alloy) || row.isForAGroupWith(alloy))
        .toList();
  }

  /** How long an alloy stays soft after the quench; empty if no row names it. */
  public Optional<FormingWindow> formingWindow(String alloy) {
    return FormingWindow.of(alloy, tables().heatTreatments());
  }

  public List<SheetTolerance> sheetTolerances() {
    return tables().tolerances();
  }

  public List<Gauge> gauges() {
    return tables().gauges();
  }

  private static boolean isOf(String asked, String alloy) {
    return asked.isEmpty() || asked.equalsIgnoreCase(alloy);
  }

  /**
   * Reads a thickness: {@code 1.2}, {@code 1.2 mm}, {@code 20 SWG}, {@code 20 AWG} or {@code 0.036
   * in}.
   *
   * @return empty if it is written otherwise, or is a gauge that the table lacks
   */
  public Optional<Thickness> thickness(String written) {
    Matcher parts = WRITTEN.matcher(written);
    if (!parts.matches()) {
      return Optional.empty();
    }
    double number = Double.parseDouble(parts.group(1));
    String unit = Optional.ofNullable(parts.group(2)).orElse("mm");
    Optional<Double> mm =
        switch (unit) {
          case "mm" -> Optional.of(number);
          case "in" -> Optional.of(number * MM_PER_INCH);
          default -> gauge(unit, number).map(Gauge::mm);
        };
    return mm.map(value -> new Thickness(written, value));
  }

  private Optional<Gauge> gauge(String system, double number) {
    return tables().gauges().stream()
        .filter(gauge -> gauge.system().startsWith(system) && gauge.number() == number)
        .findFirst();
  }

  private ShippedTables tables() {
    ShippedTables read = tables;
    if (read == null) {
      read = ShippedTables.read(jdbc);
      tables = read;
    }
    return read;
  }
}
