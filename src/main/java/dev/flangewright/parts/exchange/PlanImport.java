package dev.flangewright.parts.exchange;

import dev.flangewright.materials.KeepShopValues;
import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.parts.Builds;
import dev.flangewright.parts.Frame;
import dev.flangewright.parts.Frames;
import dev.flangewright.people.Refused;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Finds out what an import would do to a build, and why it cannot be done. */
@Service
class PlanImport {

  private static final int NAMED = 20;

  private final Builds builds;
  private final Frames frames;
  private final PartsOfBuild parts;
  private final MaterialLibrary library;
  private final KeepShopValues shop;

  PlanImport(
      Builds builds,
      Frames frames,
      PartsOfBuild parts,
      MaterialLibrary library,
      KeepShopValues shop) {
    this.builds = builds;
    this.frames = frames;
    this.parts = parts;
    this.library = library;
    this.shop = shop;
  }

  /**
   * @throws Refused if there is no such build
   */
  @Transactional(readOnly = true)
  public ImportPlan plan(long buildId, RegisterFiles files, Progress progress) {
    if (!builds.existsById(buildId)) {
      throw Refused.unknown("build", buildId);
    }
    return plan(buildId, read(files, progress), progress);
  }

  FilesRead read(RegisterFiles files, Progress progress) {
    if (files.areMissing()) {
      throw Refused.unacceptable("Choose register.csv, contours.csv or both.");
    }
    return FilesRead.of(files, library::thickness, progress);
  }

  ImportPlan plan(long buildId, FilesRead read, Progress progress) {
    PlanSheet sheet = new PlanSheet();
    ComparePart compare =
        new ComparePart(sheet, read, library::thickness, shop.of(buildId).practice());
    long[] leftAlone = {parts.count(buildId), 0};
    framesMove(buildId, read, sheet);
    parts.walk(
        buildId,
        Entry.of(read),
        "Checking parts",
        progress,
        (entry, part) -> {
          compare.compare(entry, part);
          if (part != null && entry.row() != null) {
            leftAlone[0]--;
            leftAlone[1] +=
                part.flanges().stream()
                    .filter(
                        f -> !read.register().names(new FlangeKey(entry.partNumber(), f.name())))
                    .count();
          }
        });
    return sheet.plan(read.problems(), notices(buildId, read, compare, leftAlone[0], leftAlone[1]));
  }

  private void framesMove(long buildId, FilesRead read, PlanSheet sheet) {
    List<Frame> standing = new ArrayList<>(frames.findByBuildId(buildId));
    standing.sort(Comparator.comparing(Frame::code));
    for (Frame frame : standing) {
      var inFile = read.register().frames().get(frame.code());
      if (inFile != null && !inFile.positionMm().equals(frame.positionMm())) {
        sheet.change(
            new Change(
                frame.code(),
                "",
                "frame_position_mm",
                frame.positionMm().text(),
                inFile.positionMm().text()));
      }
    }
  }

  private List<String> notices(
      long buildId, FilesRead read, ComparePart compare, long otherParts, long otherFlanges) {
    List<String> notices = new ArrayList<>(read.notices());
    boolean hasRegister = read.register().rows() > 0;
    if (hasRegister && otherParts > 0) {
      notices.add(
          "Parts of the build that are not in register.csv: "
              + otherParts
              + ". They stay as they are.");
    }
    if (hasRegister && otherFlanges > 0) {
      notices.add(
          "Flanges that the build has and register.csv has not: "
              + otherFlanges
              + ". They stay as they are.");
    }
    if (compare.withoutContour() > 0) {
      notices.add(
          "Flanges without a contour: "
              + compare.withoutContour()
              + ". They have no figures until contours.csv brings one.");
    }
    unknownMetals(buildId, read).entrySet().stream()
        .limit(NAMED)
        .map(
            metal ->
                "No table has "
                    + metal.getKey()
                    + ", so no limits can be computed; parts: "
                    + metal.getValue()
                    + ".")
        .forEach(notices::add);
    return notices;
  }

  private Map<String, Integer> unknownMetals(long buildId, FilesRead read) {
    Map<String, Integer> unknown = new TreeMap<>();
    for (PartInFile part : read.register().parts().values()) {
      var drawn = part.facts().drawn();
      if (library.metal(buildId, drawn.alloy(), drawn.temper(), part.thicknessMm()).isUnknown()) {
        unknown.merge(drawn.alloy() + " " + drawn.temper(), 1, Integer::sum);
      }
    }
    return unknown;
  }
}
