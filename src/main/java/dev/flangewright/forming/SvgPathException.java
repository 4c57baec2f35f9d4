package dev.flangewright.forming;

/** A refusal of path data, with the place in the text. */
public final class SvgPathException extends RuntimeException {

  private final int position;

  SvgPathException(int position, String explanation) {
    super("path, character " + position + ": " + explanation);
    this.position = position;
  }

  /** Counted from 1; one beyond the text when something is missing at its end. */
  public int position() {
    return position;
  }
}
