package dev.flangewright.parts.exchange;

import dev.flangewright.materials.Thickness;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.FlangeDrawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;

/**
 * Both files read and each checked by itself; what they mean for a build is not known yet.
 *
 * @param registerGiven whether there is a register file
 * @param notices what the reader should know though nothing is wrong
 */
record FilesRead(
    boolean registerGiven,
    CsvRead registerRead,
    RegisterInFile register,
    CsvRead contoursRead,
    ContoursInFile contours,
    Problems problems,
    List<String> notices) {

  static FilesRead of(
      RegisterFiles files, Function<String, Optional<Thickness>> thicknesses, Progress progress) {
    Problems problems = new Problems();
    RegisterInFile register = new RegisterInFile(problems, thicknesses);
    ContoursInFile contours = new ContoursInFile(problems);
    CsvRead ofRegister = CsvRead.NOTHING;
    CsvRead ofContours = CsvRead.NOTHING;
    Resource registerFile = files.register();
    if (registerFile != null) {
      ofRegister = new CsvReader(CsvFile.REGISTER, problems, progress).read(registerFile, register);
    }
    Resource contoursFile = files.contours();
    if (contoursFile != null) {
      ofContours = new CsvReader(CsvFile.CONTOURS, problems, progress).read(contoursFile, contours);
    }
    contours.end();
    List<String> notices = new ArrayList<>();
    styleNotice(CsvFile.REGISTER, ofRegister, notices);
    styleNotice(CsvFile.CONTOURS, ofContours, notices);
    if (contours.scattered() > 0) {
      notices.add(
          "In contours.csv the rows of some flanges do not stand together; an export writes each"
              + " flange in one piece.");
    }
    return new FilesRead(
        registerFile != null, ofRegister, register, ofContours, contours, problems, notices);
  }

  /** True if a register file was given whose rows are not known, or not all of them. */
  boolean isRegisterBroken() {
    return registerGiven && registerRead.style() == null;
  }

  /**
   * A flange as it would be drawn after the import: a file without tolerances leaves the one it
   * has.
   *
   * @param now null if the build has no such flange
   */
  FlangeDrawing drawn(PartInFile.FlangeInFile inFile, @Nullable Flange now) {
    FileStyle style = registerRead.style();
    if (now == null || style == null || style.isWhole(CsvFile.REGISTER)) {
      return inFile.drawn();
    }
    return inFile.drawn().fittedAs(now.drawn());
  }

  private static void styleNotice(CsvFile file, CsvRead read, List<String> notices) {
    if (read.oddLine() > 0) {
      notices.add(
          file.fileName()
              + " is not written in one style (line ends, quotation marks, empty lines; first seen"
              + " on line "
              + read.oddLine()
              + "); an export writes it in one.");
    }
  }
}
