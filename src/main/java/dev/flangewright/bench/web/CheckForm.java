package dev.flangewright.bench.web;

import dev.flangewright.bench.CheckCard;
import dev.flangewright.bench.CheckKind;
import dev.flangewright.people.Refused;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A check as typed in the route editor; numbers as typed, with a comma or a point. */
record CheckForm(
    @Nullable String question,
    @Nullable CheckKind kind,
    @Nullable String unit,
    @Nullable String nominal,
    @Nullable String from,
    @Nullable String to) {

  static final CheckForm EMPTY = new CheckForm("", CheckKind.YES_NO, "", "", "", "");

  static CheckForm of(CheckCard card) {
    return new CheckForm(
        card.question(),
        card.kind(),
        card.unit(),
        text(card.nominal()),
        text(card.least()),
        text(card.most()));
  }

  CheckCard card() {
    return new CheckCard(
        question == null ? "" : question,
        kind == null ? CheckKind.YES_NO : kind,
        unit == null ? "" : unit,
        number("nominal", nominal),
        number("from", from),
        number("to", to));
  }

  private static String text(@Nullable Double number) {
    return number == null ? "" : BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  private static @Nullable Double number(String field, @Nullable String typed) {
    if (typed == null || typed.isBlank()) {
      return null;
    }
    try {
      return Double.valueOf(typed.strip().replace(',', '.').replace('−', '-'));
    } catch (NumberFormatException e) {
      throw Refused.unacceptable(field + " cannot be read; write a number such as 1.2.");
    }
  }
}
