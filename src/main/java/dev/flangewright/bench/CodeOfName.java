package dev.flangewright.bench;

import java.text.Normalizer;
import java.util.Locale;
import java.util.function.Predicate;

/** Makes the short code of a stage or cause from its name. */
public final class CodeOfName {

  private static final int LONGEST = 36; // leaves room for a number in columns of 40

  private CodeOfName() {}

  /**
   * Lower-case letters a to z, digits and dashes; numbered from 2 where the code is taken.
   *
   * @param ifNothingIsLeft the code of a name that has no such letter
   */
  public static String of(String name, String ifNothingIsLeft, Predicate<String> taken) {
    String plain = Normalizer.normalize(name, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
    String dashed = trimmed(plain.replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "-"));
    String code = dashed.isEmpty() ? ifNothingIsLeft : dashed;
    if (!taken.test(code)) {
      return code;
    }
    int number = 2;
    while (taken.test(code + "-" + number)) {
      number++;
    }
    return code + "-" + number;
  }

  private static String trimmed(String dashed) {
    String start = dashed.length() > LONGEST ? dashed.substring(0, LONGEST) : dashed;
    return start.replaceAll("^-|-$", "");
  }
}
