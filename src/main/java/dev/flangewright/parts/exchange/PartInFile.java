package dev.flangewright.parts.exchange;

import dev.flangewright.parts.FlangeDrawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A part as the register file gives it.
 *
 * @param line of its first row
 * @param thicknessMm the written thickness, read
 */
record PartInFile(
    int line, String partNumber, PartFacts facts, double thicknessMm, List<FlangeInFile> flanges) {

  /**
   * One row.
   *
   * @param place its place among the rows of the file, from 0
   */
  record FlangeInFile(int line, int place, String name, FlangeDrawing drawn) {}

  PartInFile(int line, String partNumber, PartFacts facts, double thicknessMm) {
    this(line, partNumber, facts, thicknessMm, new ArrayList<>(2));
  }

  Optional<FlangeInFile> flange(String name) {
    return flanges.stream().filter(flange -> flange.name().equals(name)).findFirst();
  }
}
