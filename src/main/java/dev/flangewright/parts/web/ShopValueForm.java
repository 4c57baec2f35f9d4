package dev.flangewright.parts.web;

import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.Practice;
import dev.flangewright.forming.ShopValue;
import dev.flangewright.materials.OwnShopValue;
import dev.flangewright.parts.Faults;
import java.util.Objects;

/**
 * A shop value as typed.
 *
 * @param seen the ordinal of the entry that the page showed; 0 if there was none
 */
record ShopValueForm(String amount, String source, String reason, int seen) {

  static final ShopValueForm EMPTY = new ShopValueForm("", "", "", 0);

  /** A field that was not sent at all counts as empty. */
  ShopValueForm {
    amount = Objects.requireNonNullElse(amount, "");
    source = Objects.requireNonNullElse(source, "");
    reason = Objects.requireNonNullElse(reason, "");
  }

  /**
   * @throws dev.flangewright.parts.DrawingRefused if something typed cannot be taken
   * @throws FormingException if only a whole number will do
   */
  OwnShopValue own(ShopValue which) {
    Faults faults = new Faults();
    double value = faults.number("value", amount, which.range()).value();
    faults.text("source", source, 300);
    faults.perhaps("reason", reason, 500);
    faults.refuseIfAny();
    Practice.check(which, value);
    return new OwnShopValue(value, source, reason);
  }
}
