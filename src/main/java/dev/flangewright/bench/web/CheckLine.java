package dev.flangewright.bench.web;

import dev.flangewright.bench.Answer;
import dev.flangewright.bench.CheckKind;
import dev.flangewright.bench.PieceCheck;

/**
 * A check of the stage that is to be done now.
 *
 * @param number asks for a number
 * @param photo asks for a photo; with neither, for yes or no
 * @param photoId the photo that answers it; 0 if none does
 * @param open still to be answered, or to be answered again because it was not met
 * @param failed what stands in its way; empty if nothing does
 */
record CheckLine(
    String code,
    String question,
    String wanted,
    boolean number,
    boolean photo,
    long photoId,
    String unit,
    boolean open,
    String answer,
    String failed) {

  static CheckLine of(PieceCheck check) {
    Answer answer = check.answer();
    String answered = answer == null ? "" : answer.inWords(check.card().unit());
    return new CheckLine(
        check.code(),
        check.card().question(),
        check.card().wanted(),
        check.card().kind() == CheckKind.NUMBER,
        check.card().kind() == CheckKind.PHOTO,
        answer == null || answer.photo() == null ? 0 : answer.photo(),
        check.card().unit(),
        !check.isAnswered() || check.stopsTheStage(),
        answered + (check.passedBy() == null ? "" : ", let pass by " + check.passedBy()),
        check.stopsTheStage() ? check.said() : "");
  }
}
