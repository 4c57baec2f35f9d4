package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published and independently derived numbers of check-values.csv, each with its source. */
class CheckValuesTest {

  static List<CheckValue> values() throws IOException {
    return CheckValue.all();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("values")
  void the_calculation_meets_the_check_value(CheckValue row) {
    assertThat(computed(row)).isCloseTo(row.expected(), within(row.tolerance()));
  }

  @Test
  void the_file_holds_every_case_it_says_it_covers_and_no_other() throws IOException {
    var ids = new TreeSet<String>();
    values().forEach(value -> ids.add(value.id()));
    assertThat(ids).isEqualTo(CheckValue.covered());
  }

  @Test
  void every_row_names_a_source_and_how_it_is_known() throws IOException {
    assertThat(values())
        .allSatisfy(
            row -> {
              assertThat(row.source()).isNotBlank();
              assertThat(row.knownBy()).isIn("read", "memory", "derived");
              assertThat(row.tolerance()).isPositive();
            });
  }

  @Test
  void the_method_page_shows_every_value_beside_ours() throws IOException {
    var lines = new ArrayList<String>();
    lines.add("| case | what | value | ours | difference | allowed | source |");
    lines.add("|---|---|---|---|---|---|---|");
    values().forEach(row -> lines.add(line(row)));
    WrittenTable.check("check values", lines);
  }

  private static String line(CheckValue row) {
    var printed = row.printed();
    double ours = printed.inUnit(computed(row));
    int decimals = printed.decimals();
    return "| %s | %s: %s | %s | %s | %s | ± %s | %s (*%s*) |"
        .formatted(
            row.id(),
            row.quantity(),
            printed.inputs(),
            (printed.expected() + " " + printed.unit()).strip(),
            WrittenTable.number(ours, decimals),
            WrittenTable.signed(ours - printed.inUnit(row.expected()), decimals),
            printed.tolerance(),
            row.source(),
            row.knownBy());
  }

  private static double computed(CheckValue row) {
    return switch (row.quantity()) {
      case "setback" -> StraightBend.setbackMm(sheet(row), degrees(row));
      case "bend allowance" -> StraightBend.bendAllowanceMm(sheet(row), degrees(row));
      case "bend deduction" -> deduction(row);
      case "flange flat" -> bend(row).flatMm();
      case "web flat between two bends" -> row.in("width") - 2 * bend(row).setbackMm();
      case "channel width" ->
          2 * bend(row).straightBlankMm() + row.in("web") - 2 * bend(row).setbackMm();
      case "springback ratio" -> Springback.ratio(row.in("x"));
      case "springback ratio of a bend" -> row.in("R") / released(row);
      case "radius after release" -> released(row);
      case "angle loss by ratio" -> row.in("bend") * (1 - row.in("R") / released(row));
      case "angle loss by arc length" -> lossByArc(row);
      case "block radius" ->
          Springback.blockRadiusMm(row.in("R"), row.in("T"), row.in("Y"), row.in("E"));
      case "smallest radius that springs back flat" -> smallestFlat(row);
      case "shrink blank radius without flow" -> withoutFlow(row).blankRadiusMm();
      case "shrink strain without flow" -> Math.expm1(withoutFlow(row).strain());
      case "stretch strain of a sharp bend" -> Math.expm1(sharp(row, -1, share(row)).strain());
      case "shrink strain of a sharp bend" -> Math.expm1(sharp(row, +1, share(row)).strain());
      case "stretch strain of a sharp bend without flow" -> Math.expm1(sharp(row, -1, 0).strain());
      case "shrink strain of a sharp bend without flow" -> Math.expm1(sharp(row, +1, 0).strain());
      case "stretch edge thickness ratio" -> thickness(row, sharp(row, -1, share(row)).strain());
      case "shrink edge thickness ratio" -> thickness(row, sharp(row, +1, share(row)).strain());
      case "edge thickness ratio" -> thickness(row, Math.log1p(row.in("e")));
      case "critical stress of a hinged flange" -> row.in("E") * criticalStrain(row);
      case "critical strain of a hinged flange" -> criticalStrain(row);
      case "ruffle pitch" -> Ruffling.pitchMm(row.in("width"));
      default -> throw new IllegalArgumentException("no formula for " + row.quantity());
    };
  }

  private static Sheet sheet(CheckValue row) {
    return new Sheet(row.in("T"), row.in("R"), row.in("k", Sheet.DEFAULT_K_FACTOR), 1);
  }

  private static double degrees(CheckValue row) {
    return Math.toDegrees(row.in("bend"));
  }

  private static StraightBend bend(CheckValue row) {
    return StraightBend.of(sheet(row), row.in("width"), degrees(row));
  }

  private static double deduction(CheckValue row) {
    return 2 * StraightBend.setbackMm(sheet(row), degrees(row))
        - StraightBend.bendAllowanceMm(sheet(row), degrees(row));
  }

  private static double released(CheckValue row) {
    return Springback.partRadiusMm(row.in("R"), row.in("T"), row.in("Y"), row.in("E"));
  }

  /** The part keeps the arc of its middle surface: the block angle of the part's angle is given. */
  private static double lossByArc(CheckValue row) {
    double blockPerPart = Springback.blockAngle(1, released(row), row.in("R"), row.in("T"));
    return row.in("bend") * (1 - 1 / blockPerPart);
  }

  /** The radius at which the release radius stops being finite, by halving the interval. */
  private static double smallestFlat(CheckValue row) {
    double opens = 1;
    double flat = 10_000;
    while (flat - opens > 1e-6) {
      double radius = (opens + flat) / 2;
      double part = Springback.partRadiusMm(radius, row.in("T"), row.in("Y"), row.in("E"));
      opens = Double.isFinite(part) ? radius : opens;
      flat = Double.isFinite(part) ? flat : radius;
    }
    return flat;
  }

  /** No radial flow is m = 0; the flange's middle surface stands ρ beyond the tangent line. */
  private static EdgeDevelopment withoutFlow(CheckValue row) {
    double rho = row.in("R") + row.in("k") * row.in("T");
    double tangentRadius = row.in("middle") - rho;
    return EdgeDevelopment.of(+1, tangentRadius, rho, row.in("bend"), row.in("flat"), 0);
  }

  private static EdgeDevelopment sharp(CheckValue row, int side, double m) {
    return EdgeDevelopment.of(side, row.in("radius"), 0, Math.PI / 2, row.in("height"), m);
  }

  private static double share(CheckValue row) {
    return row.in("anisotropy") / (1 + row.in("anisotropy"));
  }

  private static double thickness(CheckValue row, double strain) {
    return FlangeSection.edgeThicknessMm(new Sheet(1, 1, 0.5, row.in("anisotropy")), strain);
  }

  private static double criticalStrain(CheckValue row) {
    return Ruffling.criticalStrain(row.in("k"), row.in("nu"), row.in("T"), row.in("width"));
  }
}
