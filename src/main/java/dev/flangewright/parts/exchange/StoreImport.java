package dev.flangewright.parts.exchange;

import dev.flangewright.parts.Build;
import dev.flangewright.parts.FigurePart;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.FlangeDrawing;
import dev.flangewright.parts.Frame;
import dev.flangewright.parts.Frames;
import dev.flangewright.parts.Part;
import dev.flangewright.people.Refused;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Stores an import: all of it or, in one transaction, nothing. */
@Repository
class StoreImport {

  private final EntityManager entities;
  private final PlanImport planner;
  private final PartsOfBuild parts;
  private final Frames frames;
  private final FigurePart figures;

  StoreImport(
      EntityManager entities,
      PlanImport planner,
      PartsOfBuild parts,
      Frames frames,
      FigurePart figures) {
    this.entities = entities;
    this.planner = planner;
    this.parts = parts;
    this.frames = frames;
    this.figures = figures;
  }

  /**
   * @param shown the fingerprint of the plan that was accepted; null to take whatever comes
   */
  @Transactional
  public ImportResult store(
      long buildId, RegisterFiles files, @Nullable String shown, Progress progress) {
    lock(buildId);
    FilesRead read = planner.read(files, progress);
    ImportPlan plan = planner.plan(buildId, read, progress);
    if (plan.isRefused()) {
      throw new ImportRefused(plan);
    }
    if (shown != null && !shown.equals(plan.fingerprint())) {
      throw Refused.conflict(
          "The register was changed since these rows were checked. Nothing was stored. Check the"
              + " files again and look at what would change now.");
    }
    if (!plan.changesNothing()) {
      write(buildId, read, progress);
    }
    return new ImportResult(plan);
  }

  /** A second import into the build waits here, and then sees what the first has stored. */
  private void lock(long buildId) {
    if (entities.find(Build.class, buildId, LockModeType.PESSIMISTIC_WRITE) == null) {
      throw Refused.unknown("build", buildId);
    }
  }

  private void write(long buildId, FilesRead read, Progress progress) {
    Map<String, Frame> standing = frames(buildId, read);
    int nextRow = next(buildId, "registerOrder");
    int nextContour = next(buildId, "contourOrder");
    parts.walk(
        buildId,
        Entry.of(read),
        "Storing parts",
        progress,
        (entry, part) -> write(read, entry, part, standing, nextRow, nextContour));
    Build build = Objects.requireNonNull(entities.find(Build.class, buildId));
    build.filesAreWritten(
        style(read.registerRead(), build.registerStyle()),
        style(read.contoursRead(), build.contoursStyle()));
  }

  private Map<String, Frame> frames(long buildId, FilesRead read) {
    Build build = entities.getReference(Build.class, buildId);
    Map<String, Frame> standing = new HashMap<>();
    frames.findByBuildId(buildId).forEach(frame -> standing.put(frame.code(), frame));
    read.register()
        .frames()
        .forEach(
            (code, inFile) -> {
              Frame frame = standing.get(code);
              if (frame == null) {
                frame = new Frame(build, code, inFile.positionMm());
                entities.persist(frame);
                standing.put(code, frame);
              }
              frame.isAt(inFile.positionMm());
            });
    entities.flush();
    return standing;
  }

  private void write(
      FilesRead read,
      Entry entry,
      @Nullable Part known,
      Map<String, Frame> frames,
      int nextRow,
      int nextContour) {
    PartInFile row = entry.row();
    Part part = known;
    boolean touched = false;
    if (row != null) {
      Frame frame = Objects.requireNonNull(frames.get(row.facts().frame()));
      if (part == null) {
        part = new Part(frame, entry.partNumber(), row.facts().drawn());
        touched = true;
      } else if (!PartFacts.of(part).equals(row.facts())) {
        part.isDrawn(frame, row.facts().drawn());
        touched = true;
      }
      touched |= flanges(read, row, part, nextRow);
    }
    if (part != null && (contours(entry, part, nextContour) || touched)) {
      figures.sumUp(part);
      entities.persist(part);
    }
  }

  private static boolean flanges(FilesRead read, PartInFile row, Part part, int nextRow) {
    boolean touched = false;
    for (PartInFile.FlangeInFile inFile : row.flanges()) {
      Flange flange = part.flange(inFile.name()).orElse(null);
      FlangeDrawing drawn = read.drawn(inFile, flange);
      if (flange == null) {
        part.addFlange(inFile.name(), drawn, nextRow + inFile.place());
        touched = true;
      } else if (!flange.drawn().equals(drawn)) {
        flange.isDrawn(drawn);
        touched = true;
      }
    }
    return touched;
  }

  private static boolean contours(Entry entry, Part part, int nextContour) {
    boolean touched = false;
    for (Map.Entry<String, ContourInFile> one : entry.contours().entrySet()) {
      Flange flange = part.flange(one.getKey()).orElseThrow();
      ContourInFile contour = one.getValue();
      if (!flange.stations().equals(contour.stations())) {
        boolean isNew = flange.stations().isEmpty();
        flange.follows(
            contour.stations(), isNew ? nextContour + contour.place() : flange.contourOrder());
        touched = true;
      }
    }
    return touched;
  }

  private int next(long buildId, String order) {
    Integer last =
        entities
            .createQuery(
                "select max(f." + order + ") from Flange f where f.part.build.id = :build",
                Integer.class)
            .setParameter("build", buildId)
            .getSingleResult();
    return last == null ? 0 : last + 1;
  }

  private static String style(CsvRead read, String before) {
    FileStyle style = read.style();
    return style == null ? before : style.text();
  }
}
