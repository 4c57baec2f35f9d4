package dev.flangewright.parts.exchange;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.CharBuffer;

/** A reader that keeps what was read since the last record, so that it can be looked at again. */
final class RecordedText extends FilterReader {

  /** Longer records are refused: an open quotation mark would else swallow the whole file. */
  static final int LONGEST_RECORD = 200_000;

  private static final int KEPT = 65_536;

  private final StringBuilder kept = new StringBuilder();
  private long first;
  private long mark;

  RecordedText(Reader in) {
    super(in);
  }

  @Override
  public int read() throws IOException {
    char[] one = new char[1];
    return read(one, 0, 1) < 0 ? -1 : one[0];
  }

  @Override
  public int read(char[] into, int offset, int length) throws IOException {
    if (first + kept.length() - mark > LONGEST_RECORD) {
      throw new RecordTooLong();
    }
    int count = super.read(into, offset, length);
    if (count > 0) {
      kept.append(into, offset, count);
    }
    return count;
  }

  /** The text from a place in the file, counted in characters, to as far as was read. */
  CharSequence from(long place) {
    mark = place;
    if (mark - first > KEPT) {
      kept.delete(0, (int) (mark - first));
      first = mark;
    }
    return CharBuffer.wrap(kept, (int) (mark - first), kept.length());
  }

  /** A record that goes on and on. */
  static final class RecordTooLong extends IOException {

    private static final long serialVersionUID = 1L;
  }
}
