package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import dev.flangewright.people.MayLogWork;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Begins a new piece of a part, or one of each hand together. */
@Service
public class BeginPiece {

  private final Pieces pieces;
  private final RouteOf routes;
  private final Twins twins;
  private final Clock clock;

  BeginPiece(Pieces pieces, RouteOf routes, Twins twins, Clock clock) {
    this.pieces = pieces;
    this.routes = routes;
    this.twins = twins;
    this.clock = clock;
  }

  /**
   * Begins the next piece of a part.
   *
   * @return the new piece, numbered after the last one of its part
   * @throws Refused if there is no such part, a piece of it is still in work, or no route serves it
   */
  @MayLogWork
  @Transactional
  public Piece of(long partId) {
    return begun(toBegin(partId));
  }

  /**
   * Begins the next pieces of a part and of its twin together.
   *
   * @return both, that of the named part first
   * @throws Refused if the part has no twin, or either piece cannot be begun
   */
  @MayLogWork
  @Transactional
  public List<Piece> pairOf(long partId) {
    Part twin =
        twins
            .of(partId)
            .orElseThrow(
                () -> Refused.conflict("This part has no twin of the other hand in its frame."));
    List<Part> inLockingOrder = Stream.of(partId, twin.id()).sorted().map(this::toBegin).toList();
    List<Piece> both = inLockingOrder.stream().map(this::begun).toList();
    both.get(0).isTwinOf(both.get(1));
    return both.get(0).part().id() == partId ? both : List.of(both.get(1), both.get(0));
  }

  private Part toBegin(long partId) {
    return pieces.findPartToBegin(partId).orElseThrow(() -> Refused.unknown("part", partId));
  }

  private Piece begun(Part part) {
    if (pieces.existsByPartIdAndState(part.id(), PieceState.IN_WORK)) {
      throw Refused.conflict(
          "A piece of " + part.partNumber() + " is in work already. Finish or scrap it first.");
    }
    int number = pieces.highestNumber(part.id()) + 1;
    Route route = routes.part(part);
    return pieces.save(new Piece(part, number, route, SignedIn.name(), clock.instant()));
  }
}
