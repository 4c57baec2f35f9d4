package dev.flangewright.blocks;

import dev.flangewright.people.Refused;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Version;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** A form block, backing block or template of a set. A scrapped one stays in the record. */
@Entity
public class Block {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private BlockSet blockSet;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private BlockKind kind;

  private int formingStage;
  private String material;
  private String place;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private BlockCondition condition;

  @OneToMany(mappedBy = "block", cascade = CascadeType.ALL)
  @OrderBy("ordinal")
  private List<BlockChange> changes = new ArrayList<>();

  protected Block() {}

  Block(BlockSet blockSet, BlockFacts facts, BlockCondition condition, Signed by) {
    this.blockSet = blockSet;
    describe(facts);
    this.condition = condition;
    log(by);
  }

  /** Takes over what is known of it; the condition is not touched. */
  void is(BlockFacts facts) {
    describe(facts);
  }

  private void describe(BlockFacts facts) {
    this.kind = facts.kind();
    this.formingStage = facts.formingStage();
    this.material = facts.material();
    this.place = facts.place();
  }

  /** It has been made. */
  public void makeReady(Signed by) {
    happens(BlockAction.MAKE_READY, by);
  }

  /** Somebody takes it from its place to work on it. */
  public void take(Signed by) {
    happens(BlockAction.TAKE, by);
  }

  public void putBack(Signed by) {
    happens(BlockAction.PUT_BACK, by);
  }

  /** Somebody found damage: nothing more is formed on it until it is repaired. */
  public void reportDamage(Signed by) {
    happens(BlockAction.REPORT_DAMAGE, by);
  }

  public void repaired(Signed by) {
    happens(BlockAction.REPAIR, by);
  }

  /** It is given up; another block takes its place in the set. */
  public void scrap(Signed by) {
    happens(BlockAction.SCRAP, by);
  }

  /**
   * @throws Refused if its condition does not allow the action, or the words it needs are missing
   */
  public void happens(BlockAction action, Signed by) {
    this.condition = action.of(condition, name(), by);
    log(by);
  }

  private void log(Signed by) {
    changes.add(new BlockChange(this, changes.size() + 1, condition, by));
  }

  /**
   * @param seen the version that a person looked at; null to go without the comparison
   * @throws Refused if somebody else changed the block since
   */
  public void refuseIfStale(@Nullable Long seen) {
    if (seen != null && seen != version) {
      throw Refused.conflict(
          "Somebody changed this block in the meantime: the "
              + name()
              + " is "
              + condition.word()
              + ". Nothing was stored; look at it again.");
    }
  }

  /** {@code "form block, stage 1"}. */
  public String name() {
    return kind.named(formingStage);
  }

  /** The identity; set once the block is stored. */
  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long version() {
    return version;
  }

  public BlockSet blockSet() {
    return blockSet;
  }

  public BlockFacts facts() {
    return new BlockFacts(kind, formingStage, material, place);
  }

  public BlockCondition condition() {
    return condition;
  }

  /** Its log, oldest first. */
  public List<BlockChange> changes() {
    return Collections.unmodifiableList(changes);
  }
}
