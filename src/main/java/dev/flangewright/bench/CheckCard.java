package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.stream.Stream;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/**
 * What a route asks at a stage.
 *
 * @param question as it stands on the page: {@code "Edge thickness at station 4"}
 * @param unit of a number: {@code "mm"}; empty for other kinds
 * @param nominal the drawing's value; null where it gives a range alone
 * @param least the lowest number that is right; null if there is none
 * @param most the highest; null if there is none
 */
@Embeddable
public record CheckCard(
    String question,
    @Enumerated(EnumType.STRING) @JdbcTypeCode(SqlTypes.VARCHAR) CheckKind kind,
    String unit,
    @Nullable Double nominal,
    @Column(name = "tolerance_from") @Nullable Double least,
    @Column(name = "tolerance_to") @Nullable Double most) {

  private static final int LONGEST_UNIT = 20;

  /**
   * @throws Refused if the question is empty or too long, or the tolerance makes no sense
   */
  public CheckCard {
    question = Texts.of("question", question, 1, 200);
    unit = Texts.of("unit", unit, 0, LONGEST_UNIT);
    boolean numbers = Stream.of(nominal, least, most).anyMatch(n -> n != null);
    if (kind != CheckKind.NUMBER && (numbers || !unit.isEmpty())) {
      throw Refused.unacceptable("Unit, nominal and tolerance belong to a number alone.");
    }
    if (kind == CheckKind.NUMBER) {
      Tolerance.refuseUnlessSound(nominal, least, most);
    }
  }

  /** A question to be answered with yes. */
  public static CheckCard yes(String question) {
    return new CheckCard(question, CheckKind.YES_NO, "", null, null, null);
  }

  /** What is wanted, in words: {@code "yes"}, {@code "1.2 mm, 1.1 to 1.3 mm"}. */
  public String wanted() {
    return switch (kind) {
      case YES_NO -> "yes";
      case NUMBER -> Tolerance.inWords(this);
      case PHOTO -> kind.words();
    };
  }

  /** Whether an answer is what was wanted. */
  boolean isMetBy(Answer answer) {
    if (answer.photo() != null) {
      return true;
    }
    return answer.number() == null
        ? Boolean.TRUE.equals(answer.yes())
        : Tolerance.holds(answer.number(), least, most);
  }
}
