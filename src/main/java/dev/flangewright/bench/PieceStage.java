package dev.flangewright.bench;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
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
  private String name;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private StageKind kind;

  private @Nullable String holdCheck;
  private @Nullable Instant startedAt;
  private @Nullable String startedBy;
  private @Nullable Instant checkedAt;
  private @Nullable String checkedBy;
  private @Nullable Instant finishedAt;
  private @Nullable String finishedBy;
  private @Nullable Double hours;

  protected PieceStage() {}

  PieceStage(Piece piece, RouteStage planned, int seq) {
    this.piece = piece;
    this.seq = seq;
    this.code = planned.code();
    this.name = planned.name();
    this.kind = planned.kind();
    this.holdCheck = planned.holdCheck();
  }

  void start(Signature by) {
    startedAt = by.at();
    startedBy = by.who();
  }

  void check(Signature by) {
    checkedAt = by.at();
    checkedBy = by.who();
  }

  void finish(Signature by, @Nullable Double hoursSpent) {
    finishedAt = by.at();
    finishedBy = by.who();
    hours = hoursSpent;
  }

  /** Finished by an inspection, begun or not. */
  void pass(Signature by) {
    if (!isStarted()) {
      start(by);
    }
    finish(by, null);
  }

  void undo(EntryAction action) {
    switch (action) {
      case START -> unstart();
      case CHECK -> uncheck();
      case FINISH -> reopen();
      default -> throw new IllegalArgumentException(action + " is not undone on a stage");
    }
  }

  /** Back to not begun, for rework; the log keeps what had been done. */
  void redo() {
    unstart();
    uncheck();
    reopen();
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

  public boolean isStarted() {
    return startedAt != null;
  }

  public boolean isFinished() {
    return finishedAt != null;
  }

  public boolean isHoldPoint() {
    return holdCheck != null;
  }

  /** A hold point, not finished, whose check is still to be done. */
  public boolean waitsForCheck() {
    return isHoldPoint() && checkedAt == null && !isFinished();
  }

  public int seq() {
    return seq;
  }

  public String code() {
    return code;
  }

  public String name() {
    return name;
  }

  public StageKind kind() {
    return kind;
  }

  public @Nullable String holdCheck() {
    return holdCheck;
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
