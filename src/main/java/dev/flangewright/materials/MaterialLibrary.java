package dev.flangewright.materials;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Looks values up in the shipped tables, which are read once: they change only by migration. */
@Service
public class MaterialLibrary {

  private static final double MM_PER_INCH = 25.4;
  private static final Pattern WRITTEN =
      Pattern.compile("(\\d{1,4}(?:\\.\\d{1,6})?)(?: (SWG|AWG|in|mm))?");

  private final JdbcClient jdbc;
  private volatile @Nullable Tables tables;

  MaterialLibrary(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** All that is known of an alloy and temper at a thickness; never null, perhaps unknown. */
  public Metal metal(String alloy, String temper, double thicknessMm) {
    return new MetalLookup(tables().materials(), tables().radii()).find(alloy, temper, thicknessMm);
  }

  /** Every alloy and temper in the table, as {@code 2024 T3}. */
  public List<String> names() {
    return tables().materials().stream()
        .map(row -> row.alloy() + " " + row.temper())
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

  private Tables tables() {
    Tables read = tables;
    if (read == null) {
      read = Tables.read(jdbc);
      tables = read;
    }
    return read;
  }

  private record Tables(
      List<MaterialRow> materials, List<BendRadiusRow> radii, List<Gauge> gauges) {

    static Tables read(JdbcClient jdbc) {
      return new Tables(
          jdbc.sql(
                  "select alloy, temper, form, thk_min_mm, thk_max_mm, density_kg_m3, young_gpa,"
                      + " proof_typ_mpa, proof_min_mpa, uts_typ_mpa, uts_min_mpa,"
                      + " elongation_min_pct, elongation_typ_pct, n_value, source, known_by, note"
                      + " from material order by id")
              .query(MaterialRow.class)
              .list(),
          jdbc.sql(
                  "select alloy, temper, thk_mm, r_over_t_low, r_over_t_high, source, known_by"
                      + " from bend_radius order by id")
              .query(BendRadiusRow.class)
              .list(),
          jdbc.sql("select system, number, mm, source, known_by from gauge order by id")
              .query(Gauge.class)
              .list());
    }
  }
}
