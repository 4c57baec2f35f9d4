package dev.flangewright.bench;

import static dev.flangewright.bench.APart.because;
import static dev.flangewright.bench.APart.by;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.people.Permission;
import dev.flangewright.stock.ABatch;
import dev.flangewright.stock.Batch;
import org.junit.jupiter.api.Test;

/** Which batch a piece was cut from, and how it is taken back and put right. */
class PieceBatchTest {

  private static final String CUT = "lay-out-and-cut";

  private final Batch first = ABatch.of("B-1", "C-1");
  private final Batch second = ABatch.of("B-2", "C-2");
  private final Piece piece = APart.piece();

  @Test
  void a_piece_takes_the_batch_that_its_cut_is_finished_with() {
    cutFrom(first);
    assertThat(piece.batch()).isSameAs(first);
    assertThat(last().said()).isEqualTo("cut from batch B-1 (cast 4711)");
  }

  @Test
  void taking_back_the_finish_takes_the_batch_off_again() {
    cutFrom(first);
    piece.undo(because("wrong piece"));
    assertThat(piece.batch()).isNull();
    piece.isCutFrom(second, piece.finish(CUT, 1.0, by("ann")));
    assertThat(piece.batch()).isSameAs(second);
  }

  @Test
  void an_inspector_puts_the_batch_right_with_a_reason_and_takes_that_back() {
    cutFrom(first);
    assertThatThrownBy(() -> piece.setBatch(second, by("ivo"))).hasMessageContaining("reason");
    assertThat(piece.batch()).isSameAs(first);
    piece.setBatch(second, because("the mark on the web says B-2"));
    assertThat(piece.batch()).isSameAs(second);
    assertThat(last().canBeTakenBackBy(Permission.LOG_WORK::equals)).isFalse();
    assertThat(last().canBeTakenBackBy(Permission.INSPECT::equals)).isTrue();
    piece.undo(because("misread"));
    assertThat(piece.batch()).isSameAs(first);
  }

  @Test
  void the_batch_of_a_scrapped_piece_can_still_be_put_down() {
    piece.scrap(CUT, by("ann"));
    piece.setBatch(first, because("offcut found"));
    assertThat(piece.batch()).isSameAs(first);
  }

  @Test
  void a_piece_sent_back_to_its_cut_stays_the_same_metal() {
    cutFrom(first);
    piece.rework(CUT, by("ivo"));
    assertThat(piece.batch()).isSameAs(first);
  }

  private void cutFrom(Batch batch) {
    piece.start(CUT, by("ann"));
    piece.isCutFrom(batch, piece.finish(CUT, 1.0, by("ann")));
  }

  private StageEntry last() {
    return piece.log().get(piece.log().size() - 1);
  }
}
