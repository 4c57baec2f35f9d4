package dev.flangewright.stock;

import static dev.flangewright.stock.ABatch.by;
import static dev.flangewright.stock.ABatch.facts;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.people.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What happens to a batch, and what cannot. */
class BatchTest {

  private final Batch batch = ABatch.of("B-12", "C-2041");

  @Test
  void a_delivery_waits_until_somebody_says_who_checked_its_certificate() {
    assertThat(batch.condition()).isEqualTo(BatchCondition.RECEIVED);
    assertThatThrownBy(() -> batch.release(by(" ")))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("who checked the certificate");
    batch.release(by("Ivo, cast number read on the sheet"));
    assertThat(batch.condition()).isEqualTo(BatchCondition.RELEASED);
  }

  @Test
  void a_batch_without_a_certificate_is_never_released() {
    Batch bare = ABatch.of("B-13", "");
    assertThatThrownBy(() -> bare.release(by("ivo")))
        .hasMessageContaining("B-13 cannot be released without the number of its certificate");
    bare.holdBack(by("no papers"));
    assertThatThrownBy(() -> bare.takeBack(by("found fit")))
        .hasMessageContaining("without the number of its certificate");
    assertThat(bare.condition()).isEqualTo(BatchCondition.HELD_BACK);
    assertThat(bare.changes()).hasSize(2);
  }

  @Test
  void a_batch_is_held_back_with_a_reason_and_taken_back_with_another() {
    batch.release(by("ivo"));
    assertThatThrownBy(() -> batch.holdBack(by(""))).hasMessageContaining("why nothing may be cut");
    batch.holdBack(by("cast recalled"));
    assertThatThrownBy(() -> batch.useUp(by("")))
        .hasMessage("B-12 cannot be used up: it is held back.");
    batch.takeBack(by("Ivo: hardness tested, fits"));
    assertThat(batch.condition()).isEqualTo(BatchCondition.RELEASED);
    assertThat(batch.changes())
        .extracting(BatchChange::words)
        .containsExactly("recorded", "ivo", "cast recalled", "Ivo: hardness tested, fits");
  }

  @Test
  void a_used_up_batch_can_still_be_held_back_so_that_its_pieces_are_looked_at() {
    batch.release(by("ivo"));
    batch.useUp(by(""));
    batch.holdBack(by("cast recalled"));
    assertThat(batch.condition()).isEqualTo(BatchCondition.HELD_BACK);
  }

  @Test
  void what_a_release_vouches_for_is_not_changed_under_it() {
    batch.release(by("ivo"));
    assertThatThrownBy(() -> batch.is(facts("C-9999", "rack 2"), by("")))
        .hasMessageContaining("Hold it back before its metal or its papers are changed");
    batch.is(facts("C-2041", "rack 5"), by(""));
    assertThat(batch.facts().place()).isEqualTo("rack 5");
    batch.holdBack(by("wrong certificate entered"));
    batch.is(facts("C-9999", "rack 5"), by(""));
    assertThat(batch.changes())
        .extracting(BatchChange::words)
        .contains(
            "changed place from rack 2 to rack 5", "changed certificate from C-2041 to C-9999");
  }

  @Test
  void a_change_that_changes_nothing_writes_no_line() {
    batch.is(facts("C-2041", "rack 2"), by(""));
    assertThat(batch.changes()).hasSize(1);
  }

  @Test
  void a_batch_is_called_by_its_mark_and_its_cast() {
    assertThat(batch.name()).isEqualTo("B-12 (cast 4711)");
  }

  @ParameterizedTest
  @EnumSource(BatchAction.class)
  void nothing_happens_to_a_batch_that_is_in_that_condition_already(BatchAction action) {
    for (BatchCondition condition : BatchCondition.values()) {
      if (action.isOpenTo(condition)) {
        assertThat(action.of(condition, "B-12", by("because"))).isNotEqualTo(condition);
      } else {
        assertThatThrownBy(() -> action.of(condition, "B-12", by("because")))
            .isInstanceOf(Refused.class);
      }
    }
  }
}
