package dev.flangewright.records;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A change of one record, not yet in its chain.
 *
 * @param at in whole microseconds, UTC
 * @param who the account, or {@code (system)} where the program acted by itself
 * @param done one of the words {@link #MADE}, {@link #CHANGED}, {@link #REMOVED}
 * @param kind of the record, in words of the workshop
 * @param id of the record among those of its kind
 * @param label what people call the record; empty if it has no name
 * @param part the part number it belongs to; null if to none
 */
public record Change(
    Instant at,
    String who,
    String done,
    String kind,
    String id,
    String label,
    @Nullable String part,
    List<FieldChange> changes) {

  public static final String MADE = "made";
  public static final String CHANGED = "changed";
  public static final String REMOVED = "removed";
}
