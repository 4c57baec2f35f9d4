package dev.flangewright.bench;

import dev.flangewright.people.Clearance;
import dev.flangewright.people.Refused;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A stage as one piece goes through it: a copy of the route's stage, with what was done. */
@Entity
public class PieceStage {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  @SuppressWarnings("UnusedVariable") // the owning side: its column is what is read
  private Piece piece;

  private int seq;
  private String code;
  @Embedded private StageCard card;
  private @Nullable Instant startedAt;
  private @Nullable String startedBy;
  private @Nullable Instant checkedAt;
  private @Nullable String checkedBy;
  private @Nullable Instant finishedAt;
  private @Nullable String finishedBy;
  private @Nullable Double hours;

  @OneToMany(mappedBy = "stage", cascade = CascadeType.ALL)
  @OrderBy("seq")
  private List<PieceCheck> checks = new ArrayList<>();

  protected PieceStage() {}

  PieceStage(Piece piece, RouteStage planned, int seq) {
    this.piece = piece;
    this.seq = seq;
    this.code = planned.code();
    this.card = planned.card();
    planned.checks().forEach(check -> checks.add(new PieceCheck(this, check)));
  }

  void start(Signature by) {
    if (kind() == StageKind.ACCEPT) {
      throw StageRefusal.needsInspection(this);
    }
    if (isStarted()) {
      throw StageRefusal.alreadyStarted(this);
    }
    begin(by);
  }

  /** Records that the check of a hold point has been done. */
  void check(Signature by) {
    if (!isHoldPoint()) {
      throw StageRefusal.noHoldPoint(this);
    }
    refuseUnlessStarted();
    if (!waitsForCheck()) {
      throw StageRefusal.alreadyChecked(this);
    }
    checkedAt = by.at();
    checkedBy = by.who();
  }

  PieceCheck answer(String checkCode, Answer answer, Signature by) {
    PieceCheck check = askedFor(checkCode);
    refuseUnlessStarted();
    check.answer(answer, by);
    return check;
  }

  PieceCheck letPass(String checkCode, Signature by) {
    PieceCheck check = askedFor(checkCode);
    if (!check.stopsTheStage()) {
      throw StageRefusal.nothingToPass(check);
    }
    if (by.note().isEmpty()) {
      throw Refused.unacceptable("note is missing: say why the check may pass.");
    }
    check.letPass(by);
    return check;
  }

  /**
   * @param hoursSpent null if not known
   */
  void finish(Signature by, @Nullable Double hoursSpent) {
    if (kind().byInspection()) {
      throw StageRefusal.needsInspection(this);
    }
    refuseUnlessStarted();
    if (waitsForCheck()) {
      throw StageRefusal.holdNotChecked(this);
    }
    refuseUnlessAnswered();
    end(by, hoursSpent);
  }

  /** Finished by an inspection, begun or not. */
  void pass(Signature by) {
    if (!isStarted()) {
      begin(by);
    }
    end(by, null);
  }

  private void refuseUnlessAnswered() {
    List<PieceCheck> open = checks.stream().filter(check -> !check.isAnswered()).toList();
    if (!open.isEmpty()) {
      throw StageRefusal.checksNotAnswered(this, open);
    }
    Optional<PieceCheck> failed = failedCheck();
    if (failed.isPresent()) {
      throw StageRefusal.checkFailed(this, failed.get());
    }
  }

  private void refuseUnlessStarted() {
    if (!isStarted()) {
      throw StageRefusal.notStarted(this);
    }
  }

  private void begin(Signature by) {
    startedAt = by.at();
    startedBy = by.who();
  }

  private void end(Signature by, @Nullable Double hoursSpent) {
    finishedAt = by.at();
    finishedBy = by.who();
    hours = hoursSpent;
  }

  void undo(StageEntry entry) {
    switch (entry.action()) {
      case START -> unstart();
      case CHECK -> uncheck();
      case FINISH -> reopen();
      case ANSWER -> askedFor(String.valueOf(entry.checkCode())).forget();
      case LET_PASS -> askedFor(String.valueOf(entry.checkCode())).takeBackPass();
      case SET_BATCH -> {} // says nothing of the stage
      default -> throw new IllegalArgumentException(entry.action() + " is not undone on a stage");
    }
  }

  /** Back to not begun, for rework; the log keeps what had been done. */
  void redo() {
    unstart();
    uncheck();
    reopen();
    checks.forEach(PieceCheck::forget);
  }

  private void unstart() {
    startedAt = null;
    startedBy = null;
  }

  private void uncheck() {
    checkedAt = null;
    checkedBy = null;
  }

  private void reopen() {
    finishedAt = null;
    finishedBy = null;
    hours = null;
  }

  private PieceCheck askedFor(String checkCode) {
    return checks.stream()
        .filter(check -> check.code().equals(checkCode))
        .findFirst()
        .orElseThrow(() -> StageRefusal.noSuchCheck(this, checkCode));
  }

  /**
   * What a check asks.
   *
   * @throws StageRefusal if the stage has no check of that code
   */
  String question(String checkCode) {
    return askedFor(checkCode).card().question();
  }

  public boolean isStarted() {
    return startedAt != null;
  }

  public boolean isFinished() {
    return finishedAt != null;
  }

  public boolean isHoldPoint() {
    return holdCheck() != null;
  }

  /** A hold point, not finished, whose check is still to be done. */
  public boolean waitsForCheck() {
    return isHoldPoint() && checkedAt == null && !isFinished();
  }

  /** The first check that was not met and that nobody has let pass. */
  public Optional<PieceCheck> failedCheck() {
    return checks.stream().filter(PieceCheck::stopsTheStage).findFirst();
  }

  /** Begun, not finished, and somebody who may release holds has to look at it. */
  public boolean isHeld() {
    return isStarted() && !isFinished() && (waitsForCheck() || failedCheck().isPresent());
  }

  /** Whether it may be done at the same time as its neighbours. */
  boolean goesAlongside() {
    return card.alongside();
  }

  public int seq() {
    return seq;
  }

  public String code() {
    return code;
  }

  public StageCard card() {
    return card;
  }

  public String name() {
    return card.name();
  }

  public StageKind kind() {
    return card.kind();
  }

  public @Nullable String holdCheck() {
    return card.holdCheck();
  }

  public @Nullable Clearance clearance() {
    return card.clearance();
  }

  public List<PieceCheck> checks() {
    return Collections.unmodifiableList(checks);
  }

  public @Nullable Instant startedAt() {
    return startedAt;
  }

  public @Nullable String startedBy() {
    return startedBy;
  }

  public @Nullable Instant checkedAt() {
    return checkedAt;
  }

  public @Nullable String checkedBy() {
    return checkedBy;
  }

  public @Nullable Instant finishedAt() {
    return finishedAt;
  }

  public @Nullable String finishedBy() {
    return finishedBy;
  }

  public @Nullable Double hours() {
    return hours;
  }
}
