package dev.flangewright.bench;

import dev.flangewright.people.Permission;
import dev.flangewright.stock.Batch;
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
import java.util.function.Predicate;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** A line of a piece's log. Lines are added and never taken away; a later line may undo one. */
@Entity
public class StageEntry {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  @SuppressWarnings("UnusedVariable") // the owning side: its column is what is read
  private Piece piece;

  private int ordinal;
  private String stageCode;
  private String stageName;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private EntryAction action;

  private String who;
  private Instant doneAt;
  private @Nullable Instant receivedAt;
  private @Nullable Double hours;
  private String note;
  private @Nullable String checkCode;
  private @Nullable String said;
  private boolean undone;

  @ManyToOne(fetch = FetchType.LAZY)
  private @Nullable Batch batch;

  protected StageEntry() {}

  StageEntry(
      Piece piece,
      int ordinal,
      PieceStage stage,
      EntryAction action,
      @Nullable Double hours,
      Signature by) {
    this.piece = piece;
    this.ordinal = ordinal;
    this.stageCode = stage.code();
    this.stageName = stage.name();
    this.action = action;
    this.who = by.who();
    this.doneAt = by.at();
    this.receivedAt = by.receivedAt();
    this.hours = hours;
    this.note = by.note();
  }

  /** Notes which check it is about, and what was answered. */
  void about(PieceCheck check) {
    this.checkCode = check.code();
    this.said = check.said();
  }

  /** Notes which batch the piece was cut from. */
  void isCutFrom(Batch cut) {
    this.batch = cut;
    says("cut from batch " + cut.name());
  }

  /** Notes what else was told with it. */
  void says(String words) {
    this.said = said == null ? words : said + "; " + words;
  }

  void isUndone() {
    this.undone = true;
  }

  /** Neither taken back nor itself the taking back of another. */
  boolean stands() {
    return !undone && action != EntryAction.UNDO;
  }

  boolean canBeUndone() {
    return stands() && action.canBeUndone();
  }

  /** Whether somebody who may do these things may take it back: what it took to make it. */
  public boolean canBeTakenBackBy(Predicate<Permission> may) {
    return action.isOpenTo(may);
  }

  /** Whether this person made it so lately that the page offers to take it back at once. */
  boolean isJustMadeBy(String by, Instant now) {
    return who.equals(by) && Moment.OFFERED.holds(receivedAt(), now);
  }

  public int ordinal() {
    return ordinal;
  }

  public String stageCode() {
    return stageCode;
  }

  public String stageName() {
    return stageName;
  }

  public EntryAction action() {
    return action;
  }

  public String who() {
    return who;
  }

  public Instant doneAt() {
    return doneAt;
  }

  /** When the installation learned of it; the same as {@link #doneAt} unless it was told later. */
  public Instant receivedAt() {
    return receivedAt == null ? doneAt : receivedAt;
  }

  public @Nullable Double hours() {
    return hours;
  }

  public String note() {
    return note;
  }

  /** The check it is about; null if it is about the whole stage. */
  public @Nullable String checkCode() {
    return checkCode;
  }

  /** The batch that it says the piece was cut from; null if it says nothing of one. */
  @Nullable Batch batch() {
    return batch;
  }

  /** What was answered and what was wanted, or what else was told; null if nothing was. */
  public @Nullable String said() {
    return said;
  }

  public boolean undone() {
    return undone;
  }
}
