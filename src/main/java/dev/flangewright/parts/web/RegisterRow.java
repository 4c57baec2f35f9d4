package dev.flangewright.parts.web;

import dev.flangewright.forming.RiskLevel;
import dev.flangewright.forming.RiskMode;
import dev.flangewright.parts.PartState;
import dev.flangewright.parts.RegisterFlange;
import dev.flangewright.parts.RegisterLine;
import dev.flangewright.parts.RegisterPart;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A line of the register as the page shows it. */
record RegisterRow(
    RegisterPart part, List<Edge> edges, String risk, PartState state, String stages) {

  private static final double LEAST_SHOWN_MM = 0.05;

  /** A flange in the line. */
  record Edge(String name, String kind, Figure strain, String gather) {

    static Edge of(RegisterFlange flange) {
      return new Edge(
          flange.name(),
          flange.kind().label(),
          Figure.percent(flange.peakEdgeStrain(), 2),
          gather(flange.gatherMm()));
    }

    private static String gather(@Nullable Double mm) {
      if (mm == null) {
        return "";
      }
      if (Math.abs(mm) < LEAST_SHOWN_MM) {
        return "nothing";
      }
      String length = Figure.mm(Math.abs(mm), 1).toString();
      return mm > 0 ? "gather " + length : "gain " + length;
    }
  }

  static RegisterRow of(RegisterLine line) {
    return new RegisterRow(
        line.part(),
        line.flanges().stream().map(Edge::of).toList(),
        risk(line),
        line.progress().state(),
        stages(line));
  }

  private static String risk(RegisterLine line) {
    RiskMode mode = line.part().riskMode();
    RiskLevel level = line.part().riskLevel();
    return mode == null || level == null
        ? "No figures yet"
        : level.label()
            + ": "
            + mode.label()
            + ", "
            + Figure.percent(line.part().riskUtilisation(), 0);
  }

  private static String stages(RegisterLine line) {
    var progress = line.progress();
    String done =
        progress.total() == 0 ? "" : progress.done() + " of " + progress.total() + " stages";
    String scrapped = progress.scrapped() == 0 ? "" : progress.scrapped() + " scrapped";
    return done.isEmpty() || scrapped.isEmpty() ? done + scrapped : done + ", " + scrapped;
  }

  /** As written; a bare number is in mm. */
  public String thickness() {
    String written = part.thickness();
    return written.contains(" ") ? written : written + "\u00A0mm";
  }
}
