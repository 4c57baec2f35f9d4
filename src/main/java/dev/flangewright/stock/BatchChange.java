package dev.flangewright.stock;

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

/** A line of a batch's log. Lines are added and never taken away. */
@Entity
public class BatchChange {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  @SuppressWarnings("UnusedVariable") // the owning side: its column is what is read
  private Batch batch;

  @SuppressWarnings("UnusedVariable") // two lines at once clash in it
  private int ordinal;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private BatchCondition condition;

  private String who;
  private Instant doneAt;
  private String words;

  protected BatchChange() {}

  BatchChange(Batch batch, int ordinal, BatchCondition condition, Signed by) {
    this.batch = batch;
    this.ordinal = ordinal;
    this.condition = condition;
    this.who = by.who();
    this.doneAt = by.at();
    this.words = by.words();
  }

  /** The condition from then on; the same as before where only facts were changed. */
  public BatchCondition condition() {
    return condition;
  }

  public String who() {
    return who;
  }

  public Instant doneAt() {
    return doneAt;
  }

  /** Who checked, why, or what was changed; may be empty. */
  public String words() {
    return words;
  }
}
