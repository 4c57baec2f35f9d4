package dev.flangewright.bench.web;

import dev.flangewright.bench.Piece;
import dev.flangewright.parts.Hand;
import dev.flangewright.parts.Part;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The other hand of a piece.
 *
 * @param hand of this piece: {@code "left"}
 * @param address of the piece begun with it, or else of the other part
 * @param words what stands there
 */
record TwinLine(String hand, String address, String words) {

  static Optional<TwinLine> of(Piece piece, Optional<Part> other) {
    Hand hand = piece.part().drawn().hand();
    return hand == Hand.NONE ? Optional.empty() : twin(piece.twin(), other, hand.word());
  }

  private static Optional<TwinLine> twin(
      @Nullable Piece begunWithIt, Optional<Part> other, String hand) {
    if (begunWithIt != null) {
      return Optional.of(
          new TwinLine(
              hand,
              "/pieces/" + begunWithIt.id(),
              begunWithIt.label() + ", " + begunWithIt.state().word()));
    }
    return other.map(part -> new TwinLine(hand, "/parts/" + part.id(), part.partNumber()));
  }
}
