package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import dev.flangewright.people.MayLogWork;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Begins a new piece of a part. */
@Service
public class BeginPiece {

  private final Pieces pieces;
  private final RouteStages routes;
  private final Clock clock;

  BeginPiece(Pieces pieces, RouteStages routes, Clock clock) {
    this.pieces = pieces;
    this.routes = routes;
    this.clock = clock;
  }

  /**
   * Begins the next piece of a part.
   *
   * @return the new piece, numbered after the last one of its part
   * @throws Refused if there is no such part, a piece of it is still in work, or the build has no
   *     route
   */
  @MayLogWork
  @Transactional
  public Piece of(long partId) {
    Part part = pieces.findPartToBegin(partId).orElseThrow(() -> Refused.unknown("part", partId));
    if (pieces.existsByPartIdAndState(partId, PieceState.IN_WORK)) {
      throw Refused.conflict(
          "A piece of " + part.partNumber() + " is in work already. Finish or scrap it first.");
    }
    int number = pieces.highestNumber(partId) + 1;
    var route = routes.findByBuildIdOrderBySeq(part.build().id());
    if (route.isEmpty()) {
      throw Refused.conflict("This build has no route yet. Its lead or manager sets one first.");
    }
    return pieces.save(new Piece(part, number, route, SignedIn.name(), clock.instant()));
  }
}
