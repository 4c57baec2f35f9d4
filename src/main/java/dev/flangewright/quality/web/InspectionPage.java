package dev.flangewright.quality.web;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.PieceState;
import dev.flangewright.people.Permission;
import dev.flangewright.people.SignedIn;
import dev.flangewright.quality.Outcome;
import dev.flangewright.quality.ScrapCause;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the inspection page offers.
 *
 * @param open false for a piece that is done: nothing is recorded on it any more
 * @param waitsFor the stage that must be finished before the piece can be passed; empty if none
 */
record InspectionPage(
    long id,
    long version,
    String partNumber,
    int number,
    boolean open,
    String waitsFor,
    String currentStage,
    Map<Outcome, String> outcomes,
    Map<String, String> stages,
    List<ScrapCause> causes) {

  static InspectionPage of(Piece piece, List<ScrapCause> causes) {
    String waitsFor =
        piece.current().filter(s -> !s.kind().byInspection()).map(PieceStage::name).orElse("");
    return new InspectionPage(
        piece.id(),
        piece.version(),
        piece.part().partNumber(),
        piece.number(),
        piece.state() == PieceState.IN_WORK,
        waitsFor,
        piece.current().map(PieceStage::code).orElse(""),
        outcomes(waitsFor.isEmpty()),
        stages(piece),
        causes);
  }

  private static Map<Outcome, String> outcomes(boolean passable) {
    Map<Outcome, String> words = new LinkedHashMap<>();
    if (SignedIn.may(Permission.INSPECT)) {
      if (passable) {
        words.put(Outcome.ACCEPT, "Accept: it is as drawn");
        words.put(Outcome.CONCESSION, "Concession: accept it with a recorded deviation");
      }
      words.put(Outcome.REWORK, "Rework: send it back to a stage");
    }
    words.put(Outcome.SCRAP, "Scrap: it is lost, for a cause");
    return words;
  }

  private static Map<String, String> stages(Piece piece) {
    Map<String, String> words = new LinkedHashMap<>();
    piece.stages().forEach(stage -> words.put(stage.code(), stage.name()));
    return words;
  }
}
