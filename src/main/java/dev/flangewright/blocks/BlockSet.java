package dev.flangewright.blocks;

import dev.flangewright.parts.Build;
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
import jakarta.persistence.Version;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/**
 * The blocks and templates that one part, or a handed pair, needs. Parts name it by its code, as
 * their register file does, so that the code never changes.
 */
@Entity
public class BlockSet {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private Build build;

  private String code;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private @Nullable BlockHand hand;

  private @Nullable Double pinMm;
  private String place;
  private String note;

  @OneToMany(mappedBy = "blockSet", cascade = CascadeType.ALL)
  private List<Block> blocks = new ArrayList<>();

  protected BlockSet() {}

  BlockSet(Build build, String code, BlockSetFacts facts) {
    this.build = build;
    this.code = code;
    describe(facts);
  }

  void is(BlockSetFacts facts) {
    describe(facts);
  }

  private void describe(BlockSetFacts facts) {
    this.hand = facts.hand();
    this.pinMm = facts.pinMm();
    this.place = facts.place();
    this.note = facts.note();
  }

  Block add(BlockFacts facts, BlockCondition condition, Signed by) {
    Block block = new Block(this, facts, condition, by);
    blocks.add(block);
    return block;
  }

  public BlockSetFacts facts() {
    return new BlockSetFacts(hand, pinMm, place, note);
  }

  /** By kind, then by stage, in the order in which they were recorded; scrapped ones last. */
  public List<Block> blocks() {
    return blocks.stream()
        .sorted(
            Comparator.comparing((Block block) -> block.condition() == BlockCondition.SCRAPPED)
                .thenComparing(block -> block.facts().kind())
                .thenComparing(block -> block.facts().formingStage())
                .thenComparing(Block::id))
        .toList();
  }

  /** The identity; set once the set is stored. */
  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long version() {
    return version;
  }

  public Build build() {
    return build;
  }

  public String code() {
    return code;
  }
}
