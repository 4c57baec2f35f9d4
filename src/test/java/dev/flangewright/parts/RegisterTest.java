package dev.flangewright.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.parts.PartProgress.Progress;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RegisterTest {

  private final List<RegisterLine> lines =
      List.of(
          line(1, "P-2", "F10", "900", "LOW", 0.2, -0.03, PartState.ACCEPTED),
          line(2, "P-1", "F2", "-50", "BEYOND", 1.3, 0.09, PartState.NOT_BEGUN),
          line(3, "P-3", "F10", "900", null, null, null, PartState.IN_WORK));

  @ParameterizedTest
  @CsvSource({
    "FRAME, 'P-1,P-2,P-3'",
    "NUMBER, 'P-1,P-2,P-3'",
    "RISK, 'P-1,P-2,P-3'",
    "STRAIN, 'P-1,P-2,P-3'",
    "STATE, 'P-1,P-3,P-2'"
  })
  void the_register_reads_in_the_order_asked_for(RegisterOrder order, String numbers) {
    assertThat(numbers(new RegisterFilter("", "", "", ""), order)).isEqualTo(numbers);
  }

  @ParameterizedTest
  @CsvSource({
    "p-2, '', '', '', P-2",
    "2024 o, '', '', '', 'P-1,P-2,P-3'",
    "'', F10, '', '', 'P-2,P-3'",
    "'', '', IN_WORK, '', P-3",
    "'', '', '', BEYOND, P-1",
    "'', '', '', UNKNOWN, P-3",
    "'', F10, '', LOW, P-2",
    "'', '', NO_SUCH_STATE, '', ''"
  })
  void a_filter_takes_the_parts_that_it_names(
      String q, String frame, String state, String risk, String numbers) {
    var filter = new RegisterFilter(q, frame, state, risk);
    assertThat(numbers(filter, RegisterOrder.NUMBER)).isEqualTo(numbers);
  }

  @Test
  void frames_stand_along_the_hull_and_not_by_their_letters() {
    assertThat(Register.frames(lines)).containsExactly("F2", "F10");
  }

  private String numbers(RegisterFilter filter, RegisterOrder order) {
    return String.join(
        ",",
        Register.sought(lines, filter, order).stream()
            .map(line -> line.part().partNumber())
            .toList());
  }

  private static RegisterLine line(
      long id,
      String number,
      String frame,
      String position,
      @Nullable String risk,
      @Nullable Double utilisation,
      @Nullable Double strain,
      PartState state) {
    var part =
        new RegisterPart(
            id,
            number,
            frame,
            new Written(position),
            "1",
            Hand.NONE,
            "D",
            "2024",
            "O",
            "1.2",
            "B",
            null,
            risk == null ? null : "SPLIT",
            risk,
            utilisation);
    var flange = new RegisterFlange(id, "outer", FlangeKind.SHRINK, strain, 1.0);
    return new RegisterLine(part, List.of(flange), new Progress(state, 1, 9, 0, state.word()));
  }
}
