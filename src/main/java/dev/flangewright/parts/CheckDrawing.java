package dev.flangewright.parts;

import dev.flangewright.forming.Contour;
import dev.flangewright.forming.ContourRun;
import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.FormingInput;
import dev.flangewright.materials.MaterialLibrary;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** What a register entry must be, whether it comes from a form or from a file. */
@Component
public class CheckDrawing {

  private final MaterialLibrary library;

  CheckDrawing(MaterialLibrary library) {
    this.library = library;
  }

  /** A part's number and its frame's code are texts of their own; the rest is the drawing. */
  public PartDrawing part(PartEntry written, Faults faults) {
    faults.text("part_number", written.partNumber(), 60);
    faults.text("frame", written.frame(), 40);
    return new PartDrawing(
        faults.perhaps("segment", written.segment(), 60),
        hand(written.hand(), faults),
        faults.perhaps("drawing", written.drawing(), 60),
        faults.perhaps("drawing_issue", written.drawingIssue(), 30),
        faults.text("alloy", written.alloy(), 60),
        faults.text("temper", written.temper(), 30),
        thickness(written.thicknessMm(), faults),
        faults.number(
            "inside_bend_radius_mm", written.insideBendRadiusMm(), FormingInput.INSIDE_BEND_RADIUS),
        faults.perhaps("block_set", written.blockSet(), 60));
  }

  public FlangeDrawing flange(FlangeEntry written, Faults faults) {
    faults.text("flange", written.flange(), 40);
    var drawn =
        new FlangeDrawing(
            kind(written.flangeKind(), faults),
            faults.number(
                "finished_width_mm", written.finishedWidthMm(), FormingInput.FLANGE_WIDTH),
            faults.number("working_width_mm", written.workingWidthMm(), FormingInput.FLANGE_WIDTH),
            faults.perhapsNumber(
                "fit_tolerance_mm", written.fitToleranceMm(), FormingInput.FIT_TOLERANCE));
    if (faults.isEmpty() && drawn.workingWidthMm().value() < drawn.finishedWidthMm().value()) {
      faults.add(
          "working_width_mm",
          written.workingWidthMm(),
          "it must be at least the finished width, " + written.finishedWidthMm() + " mm");
    }
    return drawn;
  }

  /** The kind that was written must be the one that the contour makes. */
  public static void kindAgrees(FlangeKind written, Contour contour, Faults faults) {
    if (contour.kind() != written) {
      faults.add("flange_kind", written.label(), "the contour makes it " + found(contour));
    }
  }

  private static String found(Contour contour) {
    String runs =
        contour.runs().stream()
            .filter(run -> run.kind() != FlangeKind.PLAIN)
            .sorted(Comparator.comparingDouble(ContourRun::tightestRadiusMm))
            .limit(4)
            .map(CheckDrawing::run)
            .collect(Collectors.joining(", "));
    return contour.kind().label() + (runs.isEmpty() ? " (it is straight)" : " (" + runs + ")");
  }

  private static String run(ContourRun run) {
    return String.format(
        Locale.ROOT,
        "%s of radius %.1f mm at stations %d to %d",
        run.kind().label(),
        run.tightestRadiusMm(),
        run.firstStation(),
        run.lastStation());
  }

  private String thickness(String written, Faults faults) {
    library
        .thickness(faults.perhaps("thickness_mm", written, 30))
        .ifPresentOrElse(
            read -> faults.within("thickness_mm", written, read.mm(), FormingInput.THICKNESS),
            () ->
                faults.add(
                    "thickness_mm",
                    written,
                    "it must be mm as 1.2, a gauge as 20 SWG, or inches as 0.036 in"));
    return written;
  }

  private static Hand hand(String written, Faults faults) {
    for (Hand hand : Hand.values()) {
      if (hand.word().equals(written)) {
        return hand;
      }
    }
    faults.add("hand", written, "it must be left, right or none");
    return Hand.NONE;
  }

  /** How an edge was left, by the name of the condition. */
  static EdgeCondition edge(String name, Faults faults) {
    return Arrays.stream(EdgeCondition.values())
        .filter(edge -> edge.name().equals(name))
        .findFirst()
        .orElseGet(
            () -> {
              faults.add("edge_condition", name, "it must be one of the conditions in the list");
              return EdgeCondition.POLISHED;
            });
  }

  private static FlangeKind kind(String written, Faults faults) {
    return Arrays.stream(FlangeKind.values())
        .filter(kind -> kind.label().equals(written))
        .findFirst()
        .orElseGet(
            () -> {
              faults.add("flange_kind", written, "it must be shrink, stretch, plain or mixed");
              return FlangeKind.PLAIN;
            });
  }
}
