package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.parts.PartProgress.Progress;
import dev.flangewright.parts.PartState;
import java.util.List;
import org.junit.jupiter.api.Test;

class AttemptsTest {

  private static final PieceLine SCRAPPED =
      new PieceLine(1, 1, 1, PieceState.SCRAPPED, 5, 11, null, false, null, false, 0);
  private static final PieceLine AT_THE_HOLD =
      new PieceLine(
          2,
          1,
          2,
          PieceState.IN_WORK,
          3,
          11,
          new StageCard("Edges deburred", StageKind.EDGE),
          true,
          "ann",
          true,
          7);
  private static final PieceLine FORMING =
      new PieceLine(
          2,
          1,
          2,
          PieceState.IN_WORK,
          4,
          11,
          new StageCard("First flange", StageKind.FORM_SHRINK),
          true,
          "ann",
          false,
          9);
  private static final PieceLine CONCEDED =
      new PieceLine(2, 1, 2, PieceState.CONCESSION, 11, 11, null, false, null, false, 0);
  private static final PieceLine ACCEPTED =
      new PieceLine(3, 1, 3, PieceState.ACCEPTED, 11, 11, null, false, null, false, 0);

  @Test
  void a_part_without_pieces_is_not_begun() {
    assertThat(Attempts.NONE.progress()).isEqualTo(Progress.NOT_BEGUN);
  }

  @Test
  void a_part_whose_only_piece_was_scrapped_is_not_begun_again() {
    assertThat(of(SCRAPPED))
        .isEqualTo(
            new Progress(PartState.NOT_BEGUN, 0, 0, 1, "not begun again: piece 1 was scrapped"));
  }

  @Test
  void the_piece_in_work_tells_how_far_the_part_is() {
    assertThat(of(SCRAPPED, FORMING))
        .isEqualTo(new Progress(PartState.IN_WORK, 4, 11, 1, "in work: first flange, begun"));
    assertThat(of(AT_THE_HOLD).state()).isEqualTo(PartState.HELD);
  }

  @Test
  void an_accepted_piece_counts_before_one_with_a_concession_and_before_one_in_work() {
    assertThat(of(CONCEDED).state()).isEqualTo(PartState.CONCESSION);
    assertThat(of(CONCEDED, ACCEPTED).state()).isEqualTo(PartState.ACCEPTED);
    assertThat(of(FORMING, ACCEPTED).state()).isEqualTo(PartState.ACCEPTED);
  }

  private static Progress of(PieceLine... pieces) {
    return new Attempts(List.of(pieces)).progress();
  }
}
