package dev.flangewright.parts.exchange;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.FormingInput;
import dev.flangewright.materials.Thickness;
import dev.flangewright.parts.FlangeDrawing;
import dev.flangewright.parts.Hand;
import dev.flangewright.parts.PartDrawing;
import dev.flangewright.parts.Written;
import dev.flangewright.parts.exchange.PartInFile.FlangeInFile;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Gathers the rows of a register file, each checked alone and against those before it. */
final class RegisterInFile implements Consumer<CsvRow> {

  private static final Map<String, Hand> HANDS = new LinkedHashMap<>();
  private static final Map<String, FlangeKind> KINDS = new LinkedHashMap<>();

  static {
    for (Hand hand : Hand.values()) {
      HANDS.put(hand.word(), hand);
    }
    for (FlangeKind kind : FlangeKind.values()) {
      KINDS.put(kind.label(), kind);
    }
  }

  /** Where a frame stands, and the line that first said so. */
  record FrameInFile(int line, Written positionMm) {}

  private final Problems problems;
  private final Function<String, Optional<Thickness>> thicknesses;
  private final Map<String, PartInFile> parts = new LinkedHashMap<>();
  private final Map<String, FrameInFile> frames = new LinkedHashMap<>();
  private final Map<FlangeKey, Integer> lines = new HashMap<>();

  /**
   * @param thicknesses reads a written thickness, if it can be read
   */
  RegisterInFile(Problems problems, Function<String, Optional<Thickness>> thicknesses) {
    this.problems = problems;
    this.thicknesses = thicknesses;
  }

  /** By part number, in the order of the file; without the rows that are refused. */
  Map<String, PartInFile> parts() {
    return parts;
  }

  /** By code. */
  Map<String, FrameInFile> frames() {
    return frames;
  }

  /** Whether the file has a row for the flange, good or bad. */
  boolean names(FlangeKey flange) {
    return lines.containsKey(flange);
  }

  int rows() {
    return lines.size();
  }

  @Override
  public void accept(CsvRow row) {
    Cells cells = new Cells(row, problems);
    String number = cells.name("part_number", 60);
    String frame = cells.name("frame", 40);
    Written position = cells.number("frame_position_mm", FormingInput.X);
    double thicknessMm = thickness(cells, row);
    PartFacts facts = new PartFacts(frame, drawing(cells, row));
    String flange = cells.name("flange", 40);
    FlangeDrawing drawn = flange(cells);
    Integer already = lines.putIfAbsent(new FlangeKey(number, flange), row.line());
    if (already != null) {
      cells.refuse("flange", "this flange of " + number + " is already on line " + already);
    }
    if (cells.allGood()) {
      frameStands(cells, row.line(), frame, position);
      PartInFile part =
          parts.computeIfAbsent(number, n -> new PartInFile(row.line(), n, facts, thicknessMm));
      agree(cells, part, facts);
      part.flanges().add(new FlangeInFile(row.line(), lines.size() - 1, flange, drawn));
    }
  }

  private static PartDrawing drawing(Cells cells, CsvRow row) {
    return new PartDrawing(
        cells.words("segment", 60),
        cells.choice("hand", HANDS),
        cells.words("drawing", 60),
        cells.words("drawing_issue", 30),
        cells.name("alloy", 60),
        cells.name("temper", 30),
        row.cell("thickness_mm"),
        cells.number("inside_bend_radius_mm", FormingInput.INSIDE_BEND_RADIUS),
        cells.words("block_set", 60));
  }

  private double thickness(Cells cells, CsvRow row) {
    String written = row.cell("thickness_mm");
    String range = FormingInput.THICKNESS.rangeText() + " mm";
    Optional<Double> mm = thicknesses.apply(written).map(Thickness::mm);
    if (mm.isEmpty()) {
      cells.refuse(
          "thickness_mm",
          "thickness_mm must be millimetres such as 1.2, a gauge such as 20 SWG, or inches such as"
              + " 0.036 in, and "
              + range);
    } else if (!Cells.isWithin(FormingInput.THICKNESS, mm.get())) {
      cells.refuse("thickness_mm", "thickness_mm must be " + range);
    }
    return mm.orElse(1.0);
  }

  private static FlangeDrawing flange(Cells cells) {
    FlangeDrawing drawn =
        new FlangeDrawing(
            cells.choice("flange_kind", KINDS),
            cells.number("finished_width_mm", FormingInput.FLANGE_WIDTH),
            cells.number("working_width_mm", FormingInput.FLANGE_WIDTH),
            cells.numberOrNone("fit_tolerance_mm", FormingInput.FIT_TOLERANCE));
    if (drawn.workingWidthMm().value() < drawn.finishedWidthMm().value()) {
      cells.refuse(
          "working_width_mm",
          "working_width_mm must be at least finished_width_mm, "
              + drawn.finishedWidthMm()
              + ": the flange is trimmed after forming, not before");
    }
    return drawn;
  }

  private void frameStands(Cells cells, int line, String code, Written position) {
    FrameInFile frame = frames.computeIfAbsent(code, c -> new FrameInFile(line, position));
    if (!frame.positionMm().equals(position)) {
      cells.refuse(
          "frame_position_mm",
          "frame " + code + " stands at " + frame.positionMm() + " on line " + frame.line());
    }
  }

  private static void agree(Cells cells, PartInFile part, PartFacts facts) {
    for (PartFacts.Field<PartFacts> field : PartFacts.FIELDS) {
      String before = field.text().apply(part.facts());
      if (!before.equals(field.text().apply(facts))) {
        cells.refuse(
            field.column(),
            "rows of one part must agree; line " + part.line() + " has \"" + before + "\"");
      }
    }
  }
}
