package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Puts the next job of a part to the end of the list of whoever is signed in, and back. */
@Service
@Transactional
@PreAuthorize("hasAnyAuthority('LOG_WORK', 'RELEASE_HOLD')")
public class PassOnJob {

  private final Parts parts;
  private final Pieces pieces;
  private final PassesOn passed;
  private final Clock clock;

  PassOnJob(Parts parts, Pieces pieces, PassesOn passed, Clock clock) {
    this.parts = parts;
    this.pieces = pieces;
    this.passed = passed;
    this.clock = clock;
  }

  /**
   * Passes on a part's next job for today; said again, the newest reason counts.
   *
   * @param reason 1 to 200 characters
   * @throws Refused if there is no such part, it needs nothing more, or the reason is missing
   */
  public void today(long partId, String reason) {
    Part part = part(partId);
    PassOn.Attempt on = attempt(part);
    Signature by = new Signature(SignedIn.name(), clock.instant(), reason);
    Optional<PassOn> before = passed.findByPartIdAndWho(partId, by.who());
    before.ifPresent(again -> again.meant(on, by));
    if (before.isEmpty()) {
      PassOn unused = passed.save(new PassOn(part.build().id(), partId, on, by));
    }
  }

  /** Takes it back; nothing happens if there is nothing to take back. */
  public void takeBack(long partId) {
    Part part = part(partId);
    passed.findByPartIdAndWho(part.id(), SignedIn.name()).ifPresent(passed::delete);
  }

  private Part part(long partId) {
    return parts.findById(partId).orElseThrow(() -> Refused.unknown("part", partId));
  }

  private PassOn.Attempt attempt(Part part) {
    List<Piece> begun = pieces.findByPartIdOrderByNumber(part.id());
    Optional<Piece> inWork = begun.stream().filter(Piece::isInWork).findFirst();
    if (inWork.isPresent()) {
      return new PassOn.Attempt(inWork.get().number(), inWork.get().logLines());
    }
    if (begun.stream().anyMatch(piece -> piece.state() != PieceState.SCRAPPED)) {
      throw Refused.conflict(part.partNumber() + " is accepted; there is nothing to pass on.");
    }
    return new PassOn.Attempt(begun.stream().mapToInt(Piece::number).max().orElse(0) + 1, null);
  }
}
