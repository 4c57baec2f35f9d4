package dev.flangewright.bench;

import static dev.flangewright.bench.APart.NOON;
import static dev.flangewright.bench.APart.by;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.people.Refused;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The moment in which an entry may be taken back without a reason. */
class TakeBackAtOnceTest {

  private static final String STAGE = "lay-out-and-cut";
  private Piece piece;

  @BeforeEach
  void annStartsTheFirstStageAtNoon() {
    piece = APart.piece();
    piece.start(STAGE, by("ann"));
  }

  @Test
  void it_is_offered_to_the_one_who_made_it_for_ten_seconds() {
    assertThat(piece.justLoggedBy("ann", NOON.plusSeconds(10))).isPresent();
    assertThat(piece.justLoggedBy("ann", NOON.plusSeconds(11))).isEmpty();
    assertThat(piece.justLoggedBy("ben", NOON)).isEmpty();
  }

  @Test
  void it_is_granted_a_little_longer_than_offered_and_then_asks_for_the_ordinary_way() {
    assertThatCode(() -> refuseUnlessFresh("ann", NOON.plusSeconds(15))).doesNotThrowAnyException();
    assertThatThrownBy(() -> refuseUnlessFresh("ann", NOON.plusSeconds(16)))
        .isInstanceOf(Refused.class)
        .hasMessage("The 10 seconds are over. Take the entry back below, with a reason.");
  }

  @Test
  void nobody_takes_back_at_once_what_another_has_logged() {
    assertThatThrownBy(() -> refuseUnlessFresh("ben", NOON))
        .isInstanceOf(Refused.class)
        .hasMessage("Only ann takes this entry back at once.");
  }

  @Test
  void what_somebody_logged_after_it_is_not_passed_over() {
    StageEntry annsStart = piece.log().get(0);
    piece.finish(STAGE, null, by("ben"));

    assertThat(piece.justLoggedBy("ann", NOON)).isEmpty();
    assertThatThrownBy(() -> TakeBackAtOnce.refuseUnlessFresh(piece, annsStart, "ann", NOON))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("Something was logged on the piece after this entry");
  }

  @Test
  void an_entry_made_without_network_has_its_moment_when_it_comes_in() {
    Instant received = NOON.plusSeconds(3600);
    piece.finish(STAGE, null, new Signature("ann", NOON, "", received));

    assertThat(piece.justLoggedBy("ann", received.plusSeconds(5))).isPresent();
  }

  @Test
  void after_an_undo_nothing_more_is_offered() {
    piece.finish(STAGE, null, by("ann"));
    piece.undo(APart.because(TakeBackAtOnce.REASON));

    assertThat(piece.justLoggedBy("ann", NOON)).isEmpty();
  }

  private void refuseUnlessFresh(String who, Instant now) {
    TakeBackAtOnce.refuseUnlessFresh(piece, piece.log().get(0), who, now);
  }
}
