package dev.flangewright.parts.exchange;

import dev.flangewright.forming.Contour;
import dev.flangewright.forming.ContourRun;
import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.FormingInput;
import dev.flangewright.forming.MetalValues;
import dev.flangewright.parts.ContourOf;
import dev.flangewright.parts.WrittenStation;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Whether a flange can be calculated with: its contour, its widths on it and its kind. */
final class CheckFlange {

  private static final int LONGEST_TEXT = 200_000;

  private final Problems problems;

  CheckFlange(Problems problems) {
    this.problems = problems;
  }

  void check(FlangeToCheck flange) {
    if (flange.stations().lines().length() > LONGEST_TEXT) {
      refuse(flange, null, "station", "", "the contour must have at most 200000 characters in all");
      return;
    }
    String widthColumn = "working_width_mm";
    try {
      Contour working = ContourOf.atWorkingWidth(flange.stations(), flange.drawn());
      if (!kindAgrees(flange, working)) {
        return;
      }
      figures(flange, working);
      widthColumn = "finished_width_mm";
      figures(flange, ContourOf.atFinishedWidth(flange.stations(), flange.drawn()));
    } catch (FormingException refusal) {
      refuse(flange, refusal, widthColumn);
    }
  }

  private static void figures(FlangeToCheck flange, Contour contour) {
    FlangeFigures.of(contour, flange.sheet(), MetalValues.UNKNOWN, EdgeCondition.POLISHED);
  }

  private boolean kindAgrees(FlangeToCheck flange, Contour contour) {
    FlangeKind written = flange.drawn().kind();
    if (contour.kind() == written) {
      return true;
    }
    String reason =
        "flange_kind of "
            + flange.key().flange()
            + " is "
            + written.label()
            + ", but the contour is "
            + contour.kind().label()
            + ": "
            + contour.runs().stream().map(CheckFlange::words).collect(Collectors.joining(", "))
            + " (the web lies to the left of travel: a left turn shrinks, a right turn stretches)";
    if (flange.registerLine() > 0) {
      problems.add(CsvFile.REGISTER, flange.registerLine(), "flange_kind", written.label(), reason);
    } else {
      refuse(flange, null, "station", "", reason);
    }
    return false;
  }

  private static String words(ContourRun run) {
    String stations = " at stations " + run.firstStation() + " to " + run.lastStation();
    return run.kind() == FlangeKind.PLAIN
        ? "straight" + stations
        : String.format(
            Locale.ROOT,
            "%s with a radius of %.1f mm%s",
            run.kind().label(),
            run.tightestRadiusMm(),
            stations);
  }

  private void refuse(FlangeToCheck flange, FormingException refusal, String widthColumn) {
    Integer number = refusal.station();
    WrittenStation station =
        flange.stations().list().stream()
            .filter(s -> number != null && s.number() == number)
            .findFirst()
            .orElse(null);
    boolean isWidth = refusal.field().equals(FormingInput.FLANGE_WIDTH.field());
    boolean ownWidth =
        station != null && station.widthMm() != null && widthColumn.startsWith("working");
    String column = isWidth ? (ownWidth ? "width_mm" : widthColumn) : "station";
    String reason =
        String.valueOf(refusal.getMessage())
            .replace(refusal.field(), isWidth ? column : words(refusal.field()));
    String value = refusal.value() == null ? "" : number(refusal.value());
    refuse(flange, number, column, value, reason);
  }

  private static String words(String field) {
    return switch (field) {
      case "contourRadiusMm" -> "the contour's radius (mm)";
      case "toleranceMm" -> "fit_tolerance_mm";
      case "distanceMm" -> "the distance to the station before (mm)";
      default -> field;
    };
  }

  private static String number(double value) {
    return new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros().toPlainString();
  }

  /** At the station's line, else at the first of the contour, else at the register's row. */
  private void refuse(
      FlangeToCheck flange, @Nullable Integer station, String column, String value, String reason) {
    ContourInFile contour = flange.inFile();
    if (contour != null) {
      problems.add(CsvFile.CONTOURS, contour.line(index(flange, station)), column, value, reason);
    } else {
      problems.add(CsvFile.REGISTER, flange.registerLine(), column, value, reason);
    }
  }

  private static int index(FlangeToCheck flange, @Nullable Integer station) {
    List<WrittenStation> stations = flange.stations().list();
    for (int i = 0; i < stations.size(); i++) {
      if (station != null && stations.get(i).number() == station) {
        return i;
      }
    }
    return 0;
  }
}
