package dev.flangewright.records;

/** The database was written by a version of the program that is newer than this one. */
class NewerDatabase extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  NewerDatabase(String migration) {
    super(
        "The database was written by a newer version of Flangewright: it has migration %s, which"
                .formatted(migration)
            + " this version does not know. Nothing was changed.");
  }
}
