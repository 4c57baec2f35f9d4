package dev.flangewright.quality;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.Signature;
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
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** What an inspector decided about a piece; never changed afterwards. */
@Entity
public class Inspection {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private Piece piece;

  private long buildId;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private Outcome outcome;

  private @Nullable String stageCode;
  private @Nullable String stageName;

  @ManyToOne(fetch = FetchType.LAZY)
  private @Nullable ScrapCause cause;

  private String note;
  private String who;
  private Instant doneAt;

  protected Inspection() {}

  Inspection(
      Piece piece,
      Outcome outcome,
      @Nullable PieceStage stage,
      @Nullable ScrapCause cause,
      Signature by) {
    this.piece = piece;
    this.buildId = piece.buildId();
    this.outcome = outcome;
    this.stageCode = stage == null ? null : stage.code();
    this.stageName = stage == null ? null : stage.name();
    this.cause = cause;
    this.note = by.note();
    this.who = by.who();
    this.doneAt = by.at();
  }

  public Long id() {
    return Objects.requireNonNull(id);
  }

  public Piece piece() {
    return piece;
  }

  public Outcome outcome() {
    return outcome;
  }

  /** The stage at which a piece was lost, or to which it was sent back. */
  public @Nullable String stageCode() {
    return stageCode;
  }

  public @Nullable String stageName() {
    return stageName;
  }

  public @Nullable ScrapCause cause() {
    return cause;
  }

  public String note() {
    return note;
  }

  public String who() {
    return who;
  }

  public Instant doneAt() {
    return doneAt;
  }

  public long buildId() {
    return buildId;
  }
}
