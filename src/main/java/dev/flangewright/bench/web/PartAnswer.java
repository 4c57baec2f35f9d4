package dev.flangewright.bench.web;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceState;
import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.FlangeDrawing;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartDrawing;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A part as drawn, with its flanges and its pieces. */
record PartAnswer(
    long id,
    long buildId,
    String partNumber,
    String frame,
    double framePositionMm,
    String segment,
    @Schema(description = "left, right or none.") String hand,
    String drawing,
    String drawingIssue,
    String alloy,
    String temper,
    @Schema(description = "As written: 1.2, 20 SWG or 0.036 in.") String thickness,
    double insideBendRadiusMm,
    String blockSet,
    List<OfFlange> flanges,
    List<OfPiece> pieces) {

  /** A flange as drawn. */
  @Schema(name = "FlangeOfPart")
  record OfFlange(
      long id,
      String name,
      FlangeKind kind,
      double finishedWidthMm,
      double workingWidthMm,
      @Schema(description = "How near a fair curve comes to the stations; 0 where they are exact.")
          double fitToleranceMm,
      EdgeCondition edgeCondition,
      @Schema(description = "How many stations its contour has; 0 without a contour.")
          int stations) {

    static OfFlange of(Flange flange) {
      FlangeDrawing drawn = flange.drawn();
      return new OfFlange(
          flange.id(),
          flange.name(),
          drawn.kind(),
          drawn.finishedWidthMm().value(),
          drawn.workingWidthMm().value(),
          drawn.toleranceMm(),
          flange.edgeCondition(),
          flange.stations().list().size());
    }
  }

  /** A piece of the part, in short. */
  @Schema(name = "PieceOfPart")
  record OfPiece(
      long id,
      int number,
      PieceState state,
      boolean held,
      int stagesDone,
      int stagesTotal,
      @Nullable String currentStage) {

    static OfPiece of(Piece piece) {
      return new OfPiece(
          piece.id(),
          piece.number(),
          piece.state(),
          piece.held(),
          piece.stagesDone(),
          piece.stagesTotal(),
          piece.currentStageCode());
    }
  }

  static PartAnswer of(Part part, List<Piece> pieces) {
    PartDrawing drawn = part.drawn();
    return new PartAnswer(
        part.id(),
        part.build().id(),
        part.partNumber(),
        part.frame().code(),
        part.frame().positionMm().value(),
        drawn.segment(),
        drawn.hand().word(),
        drawn.drawing(),
        drawn.drawingIssue(),
        drawn.alloy(),
        drawn.temper(),
        drawn.thickness(),
        drawn.insideBendRadiusMm().value(),
        drawn.blockSet(),
        part.flanges().stream().map(OfFlange::of).toList(),
        pieces.stream().map(OfPiece::of).toList());
  }
}
