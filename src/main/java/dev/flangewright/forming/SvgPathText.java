package dev.flangewright.forming;

import java.util.regex.Pattern;

/**
 * Reads path data character by character: commands, numbers and flags, with white space and at most
 * one comma between them.
 *
 * <p>Source: W3C SVG 2, section 9.3.9, the grammar for path data; exponents and a full stop at the
 * end of a number as in SVG 1.1, section 8.3.9.
 */
final class SvgPathText {

  static final int LONGEST = 100_000;

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?+(?:\\d++(?:\\.\\d*+)?+|\\.\\d++)(?:[eE][+-]?+\\d++)?+");

  private final String text;
  private int next;

  SvgPathText(String text) {
    if (text.length() > LONGEST) {
      throw new SvgPathException(LONGEST + 1, "longer than " + LONGEST + " characters");
    }
    this.text = text;
  }

  /** Of the next character, counted from 1. */
  int position() {
    return next + 1;
  }

  boolean ended() {
    skipSpace();
    return next == text.length();
  }

  char command() {
    char command = next < text.length() ? text.charAt(next) : ' ';
    if ("MmLlHhVvCcSsQqTtAaZz".indexOf(command) < 0) {
      throw expected("a command letter");
    }
    next++;
    return command;
  }

  /** Whether another set of numbers follows, for the same command again. */
  boolean numberFollows() {
    int start = next;
    skipSeparator();
    boolean follows = next < text.length() && "+-.0123456789".indexOf(text.charAt(next)) >= 0;
    if (!follows) {
      boolean comma = text.substring(start, next).indexOf(',') >= 0;
      next = comma ? next : start;
      if (comma) {
        throw expected("a number");
      }
    }
    return follows;
  }

  double number() {
    var matcher = NUMBER.matcher(text).region(next, text.length());
    if (!matcher.lookingAt()) {
      throw expected("a number");
    }
    double value = Double.parseDouble(matcher.group());
    if (!Double.isFinite(value)) {
      throw new SvgPathException(position(), "the number is too large");
    }
    next = matcher.end();
    return value;
  }

  /** 0 or 1, which need no separator after them. */
  boolean flag() {
    char flag = next < text.length() ? text.charAt(next) : ' ';
    if (flag != '0' && flag != '1') {
      throw expected("0 or 1");
    }
    next++;
    return flag == '1';
  }

  void skipSpace() {
    while (next < text.length() && " \t\n\f\r".indexOf(text.charAt(next)) >= 0) {
      next++;
    }
  }

  void skipSeparator() {
    skipSpace();
    if (next < text.length() && text.charAt(next) == ',') {
      next++;
      skipSpace();
    }
  }

  private SvgPathException expected(String what) {
    String found = next < text.length() ? "“" + text.charAt(next) + "”" : "the end";
    return new SvgPathException(position(), what + " is expected, not " + found);
  }
}
