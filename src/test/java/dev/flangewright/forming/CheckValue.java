package dev.flangewright.forming;

import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** A row of check-values.csv; lengths in mm, angles in rad, stresses in MPa, fractions as such. */
record CheckValue(
    String id,
    String quantity,
    Map<String, Double> inputs,
    double expected,
    double tolerance,
    Printed printed,
    String source,
    String knownBy) {

  /** Inputs, value and tolerance as the row gives them, and its unit. */
  record Printed(String inputs, String expected, String tolerance, String unit) {

    private static Printed of(CSVRecord row) {
      return new Printed(
          row.get("inputs"), row.get("expected"), row.get("tolerance"), row.get("unit"));
    }

    /** A value in base units, in the row's unit. */
    double inUnit(double value) {
      return value / CheckValue.unit(unit);
    }

    /** One place more than the tolerance has. */
    int decimals() {
      return new BigDecimal(tolerance).stripTrailingZeros().scale() + 1;
    }
  }

  private static final Map<String, Double> UNITS =
      Map.of(
          "",
          1.0,
          "mm",
          1.0,
          "in",
          25.4,
          "deg",
          Math.PI / 180,
          "%",
          0.01,
          "MPa",
          1.0,
          "psi",
          0.006894757293168361);

  static List<CheckValue> all() throws IOException {
    var format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true);
    try (var rows = format.setCommentMarker('#').get().parse(file())) {
      return rows.stream().map(CheckValue::read).toList();
    }
  }

  /** The cases that the file says it covers. */
  static TreeSet<String> covered() throws IOException {
    try (var lines = new java.io.BufferedReader(file())) {
      String list =
          lines.lines().filter(l -> l.startsWith("# Covered: ")).findFirst().orElseThrow();
      return new TreeSet<>(List.of(list.substring("# Covered: ".length()).split(" ")));
    }
  }

  private static InputStreamReader file() {
    var stream = CheckValue.class.getResourceAsStream("check-values.csv");
    return new InputStreamReader(stream, StandardCharsets.UTF_8);
  }

  private static CheckValue read(CSVRecord row) {
    var inputs = new HashMap<String, Double>();
    for (String input : row.get("inputs").split("; ")) {
      String[] nameAndValue = input.split("=", 2);
      inputs.put(nameAndValue[0], inBaseUnit(nameAndValue[1]));
    }
    double unit = unit(row.get("unit"));
    return new CheckValue(
        row.get("case"),
        row.get("quantity"),
        inputs,
        Double.parseDouble(row.get("expected")) * unit,
        Double.parseDouble(row.get("tolerance")) * unit,
        Printed.of(row),
        row.get("source"),
        row.get("known_by"));
  }

  private static double inBaseUnit(String text) {
    String[] parts = text.split(" ", 2);
    return Double.parseDouble(parts[0]) * unit(parts.length == 1 ? "" : parts[1]);
  }

  private static double unit(String name) {
    Double unit = UNITS.get(name);
    if (unit == null) {
      throw new IllegalArgumentException("unknown unit " + name);
    }
    return unit;
  }

  /** A named input; asking for one that the row does not give is an error. */
  double in(String name) {
    Double value = inputs.get(name);
    if (value == null) {
      throw new IllegalArgumentException(id + " gives no " + name);
    }
    return value;
  }

  double in(String name, double otherwise) {
    return inputs.getOrDefault(name, otherwise);
  }

  @Override
  public String toString() {
    return "%s %s (%s; %s)".formatted(id, quantity, source, knownBy);
  }
}
