package dev.flangewright.parts.exchange;

import org.jspecify.annotations.Nullable;

/**
 * What is known of a file after reading it.
 *
 * @param style null if there was no file, or its header or structure is refused
 * @param oddLine the first line that is written unlike the rest; 0 if there is none
 */
record CsvRead(@Nullable FileStyle style, int oddLine) {

  static final CsvRead NOTHING = new CsvRead(null, 0);
}
