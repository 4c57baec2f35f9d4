package dev.flangewright.bench;

import dev.flangewright.blocks.BlockReadiness;
import dev.flangewright.people.Refused;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Word from the bench of damage to the block that a stage was done on. */
@Component
public class BlockDamage {

  private static final int LONGEST = 400;

  private final BlockReadiness blocks;

  BlockDamage(BlockReadiness blocks) {
    this.blocks = blocks;
  }

  /**
   * The block whose damage could be reported when the stage is finished; empty if there is none.
   */
  public Optional<BlockNeed> reportable(Piece piece, PieceStage stage) {
    return stage
        .card()
        .blockNeed()
        .filter(need -> blocks.mayBeDamaged(piece.part(), need.kind(), need.formingStage()));
  }

  /**
   * Puts the block to those that wait for repair.
   *
   * @param what is damaged; must not be blank
   * @return what the log of the piece says of it
   * @throws Refused if the stage needs no block, none is recorded that could be damaged, or the
   *     words are too many
   */
  String report(Piece piece, PieceStage stage, String what) {
    String damage = Texts.of("blockDamage", what, 1, LONGEST);
    BlockNeed need =
        stage
            .card()
            .blockNeed()
            .orElseThrow(
                () ->
                    Refused.unacceptable(
                        "\"%s\" needs no block, so none was damaged at it."
                            .formatted(stage.name())));
    blocks.reportDamage(
        piece.part(), need.kind(), need.formingStage(), damage + " (" + piece.label() + ")");
    return need.inWords() + " damaged: " + damage;
  }
}
