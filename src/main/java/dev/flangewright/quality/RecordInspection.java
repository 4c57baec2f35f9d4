package dev.flangewright.quality;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.Pieces;
import dev.flangewright.bench.Signature;
import dev.flangewright.bench.StageClearance;
import dev.flangewright.people.Permission;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import dev.flangewright.photos.KeepPhotos;
import dev.flangewright.photos.Photo;
import dev.flangewright.photos.SubjectKind;
import dev.flangewright.photos.TakenPhoto;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Records the outcome of an inspection and lets the piece take the consequence. */
@Service
public class RecordInspection {

  private final Pieces pieces;
  private final Inspections inspections;
  private final ScrapCauses causes;
  private final StageClearance clearance;
  private final KeepPhotos photos;
  private final Clock clock;

  RecordInspection(
      Pieces pieces,
      Inspections inspections,
      ScrapCauses causes,
      StageClearance clearance,
      KeepPhotos photos,
      Clock clock) {
    this.pieces = pieces;
    this.inspections = inspections;
    this.causes = causes;
    this.clearance = clearance;
    this.photos = photos;
    this.clock = clock;
  }

  /**
   * @throws Refused if the piece, stage or cause is unknown, something is missing, or the route
   *     does not allow the outcome yet
   * @throws AccessDeniedException if the account may scrap but not pass a piece
   */
  @PreAuthorize("hasAnyAuthority('INSPECT', 'SCRAP')")
  @Transactional
  public Inspection of(long pieceId, Finding finding) {
    return of(pieceId, finding, null);
  }

  /**
   * The same, with a photo of what was found; neither is stored without the other.
   *
   * @param taken null if none was taken
   */
  @PreAuthorize("hasAnyAuthority('INSPECT', 'SCRAP')")
  @Transactional
  public Inspection of(long pieceId, Finding finding, @Nullable TakenPhoto taken) {
    if (finding.outcome() != Outcome.SCRAP && !SignedIn.may(Permission.INSPECT)) {
      throw new AccessDeniedException("Only an inspector or the lead can pass or send back");
    }
    Piece piece = pieces.findToChange(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    piece.refuseIfStale(finding.seenVersion());
    if (finding.outcome() != Outcome.SCRAP) {
      piece.inspection().ifPresent(clearance::refuseUnlessHeld);
    }
    Signature by = new Signature(SignedIn.name(), clock.instant(), finding.note());
    Inspection inspection = inspections.save(decide(piece, finding, by));
    if (taken != null) {
      Photo unused = photos.add(SubjectKind.INSPECTION, inspection.id(), taken, "");
    }
    return inspection;
  }

  private Inspection decide(Piece piece, Finding finding, Signature by) {
    if (finding.outcome() != Outcome.ACCEPT && by.note().isEmpty()) {
      throw Refused.unacceptable("note is missing: say what was found.");
    }
    PieceStage stage = null;
    ScrapCause cause = null;
    switch (finding.outcome()) {
      case ACCEPT -> piece.pass(false, by);
      case CONCESSION -> piece.pass(true, by);
      case REWORK -> stage = piece.rework(stageCode(finding), by);
      case SCRAP -> {
        cause = cause(finding.causeCode());
        stage = piece.scrap(stageCode(finding), by);
      }
    }
    return new Inspection(piece, finding.outcome(), stage, cause, by);
  }

  private static String stageCode(Finding finding) {
    String code = finding.stageCode();
    if (code == null || code.isBlank()) {
      throw Refused.unacceptable("stage is missing: name the stage of the piece.");
    }
    return code;
  }

  private ScrapCause cause(@Nullable String code) {
    if (code == null || code.isBlank()) {
      throw Refused.unacceptable("cause is missing: a scrapped piece needs a cause.");
    }
    return causes
        .findByCode(code)
        .filter(cause -> !cause.retired())
        .orElseThrow(() -> Refused.unacceptable("cause \"" + code + "\" is not in the list."));
  }
}
