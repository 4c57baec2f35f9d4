package dev.flangewright.parts.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All that the files say of one part.
 *
 * @param row null if only the contours file names the part
 * @param contours by flange
 */
record Entry(String partNumber, @Nullable PartInFile row, Map<String, ContourInFile> contours) {

  /** In the order of the register file, parts that only the contours file names at the end. */
  static List<Entry> of(FilesRead read) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    read.register()
        .parts()
        .forEach(
            (number, row) -> entries.put(number, new Entry(number, row, new LinkedHashMap<>(4))));
    read.contours()
        .contours()
        .forEach(
            (flange, contour) ->
                entries
                    .computeIfAbsent(
                        flange.partNumber(), n -> new Entry(n, null, new LinkedHashMap<>(4)))
                    .contours()
                    .put(flange.flange(), contour));
    return new ArrayList<>(entries.values());
  }
}
