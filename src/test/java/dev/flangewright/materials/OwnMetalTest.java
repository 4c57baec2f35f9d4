package dev.flangewright.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.forming.FormingException;
import dev.flangewright.people.Refused;
import java.time.Instant;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a certificate of the build's own does; its values are invented. */
class OwnMetalTest {

  private static final Instant DAY = Instant.parse("2026-05-03T09:00:00Z");
  private static final Sourced TABLE = new Sourced(76, "a table", "read");

  private static CertificateValues values(Double proof, Double uts, Double ratio) {
    return new CertificateValues(null, null, proof, uts, null, null, null, ratio);
  }

  private static OwnMetalEntry entry(Double from, Double to, CertificateValues values) {
    return new OwnMetalEntry("2024", "O", from, to, "12345", values);
  }

  private static OwnMetal metal(Double from, Double to) {
    return new OwnMetal(7, entry(from, to, values(90.0, null, 1.5)), "lead", DAY);
  }

  @Test
  void a_stated_value_answers_before_the_table_and_the_rest_stays() {
    Metal shipped = new Metal("2024", "O", 1.2, TABLE, TABLE, TABLE, TABLE, null, null, null, null);
    Metal used = metal(null, null).over(shipped);
    Sourced proof = Objects.requireNonNull(used.proofMpa());
    assertThat(proof.value()).isEqualTo(90);
    assertThat(proof.source()).isEqualTo("certificate 12345, entered by lead on 3 May 2026");
    assertThat(proof.knownBy()).isEqualTo("certificate");
    assertThat(used.utsMpa()).isEqualTo(TABLE);
    assertThat(used.elongationPct()).isNull();
    assertThat(Objects.requireNonNull(used.minBendRadiusMm()).value()).isEqualTo(1.5 * 1.2);
  }

  @ParameterizedTest
  @CsvSource({
    "0.8, 2024, O, true",
    "1.2, 2024, o, true",
    "1.21, 2024, O, false",
    "1, 2024, T3, false"
  })
  void a_certificate_is_for_its_sheet_alone(
      double thicknessMm, String alloy, String temper, boolean answers) {
    assertThat(metal(0.8, 1.2).isFor(alloy, temper, thicknessMm)).isEqualTo(answers);
  }

  @ParameterizedTest
  @CsvSource({"1.2, 1.6, true", "0.5, 0.79, false", "1.3, 2, false", ", , true"})
  void two_certificates_must_not_answer_for_one_sheet(Double from, Double to, boolean overlaps) {
    OwnMetalEntry other = entry(from, to, values(80.0, null, null));
    assertThat(metal(0.8, 1.2).overlaps(other)).isEqualTo(overlaps);
  }

  @Test
  void a_certificate_that_states_nothing_or_contradicts_itself_is_refused() {
    assertThatThrownBy(() -> entry(null, null, values(null, null, null)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("at least one value");
    assertThatThrownBy(() -> entry(null, null, values(200.0, 100.0, null)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("tensile strength");
    assertThatThrownBy(() -> entry(1.0, null, values(90.0, null, null)))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> entry(2.0, 1.0, values(90.0, null, null))).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> values(-1.0, null, null)).isInstanceOf(FormingException.class);
  }
}
