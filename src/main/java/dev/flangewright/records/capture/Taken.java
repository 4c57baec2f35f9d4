package dev.flangewright.records.capture;

import dev.flangewright.records.Change;
import dev.flangewright.records.FieldChange;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A change as it was taken down in the middle of writing, when nothing more can be read.
 *
 * @param row kept only where its whereabouts could not be told yet
 */
record Taken(
    Instant at,
    String who,
    String done,
    String kind,
    String id,
    List<FieldChange> changes,
    @Nullable Whereabouts whereabouts,
    @Nullable Object row) {

  Change at(Whereabouts place) {
    return new Change(at, who, done, kind, id, place.label(), place.part(), changes);
  }
}
