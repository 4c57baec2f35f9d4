package dev.flangewright.blocks;

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

/** A line of a block's log: who brought it into which condition. Lines are never taken away. */
@Entity
public class BlockChange {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  @SuppressWarnings("UnusedVariable") // the owning side: its column is what is read
  private Block block;

  @SuppressWarnings("UnusedVariable") // two lines at once clash in it
  private int ordinal;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private BlockCondition became;

  private String who;
  private Instant doneAt;
  private String why;

  protected BlockChange() {}

  BlockChange(Block block, int ordinal, BlockCondition became, Signed by) {
    this.block = block;
    this.ordinal = ordinal;
    this.became = became;
    this.who = by.who();
    this.doneAt = by.at();
    this.why = by.why();
  }

  public BlockCondition became() {
    return became;
  }

  public String who() {
    return who;
  }

  public Instant doneAt() {
    return doneAt;
  }

  /** Empty where nothing was said. */
  public String why() {
    return why;
  }
}
