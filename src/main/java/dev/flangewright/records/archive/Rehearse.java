package dev.flangewright.records.archive;

import java.nio.file.Path;

/** Restores an archive beside the live data, to see that it can be. */
public final class Rehearse {

  private Rehearse() {}

  /**
   * Checks every digest, loads the archive into a database of its own and compares all tables.
   *
   * @param beside folder for that database; it is removed again
   * @return what the archive says of itself
   * @throws dev.flangewright.people.Refused if the archive is damaged or does not fit
   */
  public static Manifest of(Path file, Path beside) {
    try (Archive archive = Archive.open(file);
        Stage stage = Stage.in(beside)) {
      load(archive, stage);
      return archive.manifest();
    }
  }

  static void load(Archive archive, Stage stage) {
    Migrations.refuseUnknown(stage.database(), archive.manifest());
    Migrations.bringTo(stage.database(), archive.manifest().schema());
    LoadArchive.into(stage.database(), archive);
  }
}
